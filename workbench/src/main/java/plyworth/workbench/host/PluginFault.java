package plyworth.workbench.host;

import java.nio.file.Path;

/**
 * A plugin that is left out, and why.
 *
 * @param name its id, or its file name where the id is unknown
 * @param origin jar or folder it came from
 * @param reason what is wrong and what to do
 */
public record PluginFault(String name, Path origin, String reason) {}
