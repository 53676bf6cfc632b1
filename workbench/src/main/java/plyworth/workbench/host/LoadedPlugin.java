package plyworth.workbench.host;

import java.nio.file.Path;
import plyworth.shared.scoring.ScoringPlugin;

/**
 * A plugin that was found, checked and loaded.
 *
 * @param id its id
 * @param plugin the plugin
 * @param origin jar or folder it came from
 */
public record LoadedPlugin(String id, ScoringPlugin plugin, Path origin) {}
