package plyworth.plugins.printmethod;

import plyworth.shared.scoring.Text;

/**
 * One test of print against its surface.
 *
 * @param id identifier of the rule
 * @param verdict what it says
 * @param text the remark
 * @param source where the rule and its figures come from
 */
record Gate(String id, Verdict verdict, Text text, String source) {}
