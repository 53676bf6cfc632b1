package plyworth.shared.study;

import plyworth.shared.scoring.Measurement;
import plyworth.shared.structure.Structure;

/**
 * What a laboratory or a trial found of a candidate. It stands beside what was predicted and moves
 * nothing.
 *
 * @param structure what was made
 * @param reading the reading; its figure is a full criterion id
 */
public record CandidateResult(Structure structure, Measurement reading) {}
