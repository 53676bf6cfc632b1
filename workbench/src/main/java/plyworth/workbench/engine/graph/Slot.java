package plyworth.workbench.engine.graph;

/**
 * A layer of an option at a position; all three count from 0.
 *
 * @param position index of the position, from the outside in
 * @param option index of the option at that position
 * @param layer index of the layer within the option, from the outside in
 */
public record Slot(int position, int option, int layer) {}
