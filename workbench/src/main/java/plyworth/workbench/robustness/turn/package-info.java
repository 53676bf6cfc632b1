/**
 * What would have to be true: at which figure of a single input one structure overtakes another.
 *
 * <p>{@link plyworth.workbench.robustness.turn.Inputs} finds what two structures depend on, {@link
 * plyworth.workbench.robustness.turn.Input} changes one of it, {@link
 * plyworth.workbench.robustness.turn.Duel} scores both in the changed world, and {@link
 * plyworth.workbench.robustness.turn.TurnSearch} looks for the figures at which the lead changes.
 */
package plyworth.workbench.robustness.turn;
