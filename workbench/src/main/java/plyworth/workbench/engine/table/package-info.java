/**
 * The candidate table: every candidate of a graph scored by every plugin, kept as flat columns in
 * enumeration order. A candidate is its path number, which is its row; there is no object per
 * candidate.
 *
 * <p>Contributions are asked for once per pair of neighbouring layers, joined states of short
 * completions are kept as columns, and a prefix is joined with such columns in one go ({@link
 * plyworth.workbench.engine.table.ColumnJoin}). Plugins then finish whole blocks. The work is cut
 * into {@link plyworth.workbench.engine.table.Chunk}s, each filled by one thread on its own.
 */
package plyworth.workbench.engine.table;
