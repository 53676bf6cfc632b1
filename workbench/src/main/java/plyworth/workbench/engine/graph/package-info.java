/**
 * The candidate graph: from positions and neighbour rules to every structure they allow, each once.
 *
 * <p>Two automata read a layer list from the outside in. {@link
 * plyworth.workbench.engine.graph.PositionAutomaton} knows which options spell it; {@link
 * plyworth.workbench.engine.graph.RuleAutomaton} knows what the rules remember of it, and sees
 * through absent options because it reads layers alone. {@link
 * plyworth.workbench.engine.graph.GraphBuilder} runs both together and merges what cannot be told
 * apart; {@link plyworth.workbench.engine.graph.CandidateGraph} holds the result.
 *
 * <p>Of a structure that is not among them, {@link plyworth.workbench.engine.graph.Objections} say
 * why, {@link plyworth.workbench.engine.graph.AddedOption} what the positions lack, and {@link
 * plyworth.workbench.engine.graph.NearestCandidates} which candidates come closest.
 */
package plyworth.workbench.engine.graph;
