package plyworth.workbench.analysis;

import java.util.List;

/**
 * What tells one structure from another at first sight: what holds the barrier, how it is printed,
 * what seals it. Structures that differ in gauge, paper or bond alone are of one kind.
 *
 * @param barrier ids of the barrier materials, outside first; empty for none
 * @param printing ids of the processes that print, outside first; empty when unprinted
 * @param sealant id of the material inside
 */
public record StructureKind(List<String> barrier, List<String> printing, String sealant) {

  /** Copies the lists. */
  public StructureKind {
    barrier = List.copyOf(barrier);
    printing = List.copyOf(printing);
  }
}
