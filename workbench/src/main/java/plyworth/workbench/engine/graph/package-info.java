/**
 * The candidate graph: from positions and neighbour rules to every structure they allow, each once.
 *
 * <p>Two automata read a layer list from the outside in. {@link
 * plyworth.workbench.engine.graph.PositionAutomaton} knows which options spell it; {@link
 * plyworth.workbench.engine.graph.RuleAutomaton} knows what the rules remember of it, and sees
 * through absent options because it reads layers alone. {@link
 * plyworth.workbench.engine.graph.GraphBuilder} runs both together and merges what cannot be told
 * apart; {@link plyworth.workbench.engine.graph.CandidateGraph} holds the result.
 */
package plyworth.workbench.engine.graph;
