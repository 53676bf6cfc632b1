/**
 * The plugin interface: what a scoring plugin declares, what it answers for one structure, and the
 * layerwise form in which it answers for millions.
 *
 * <p>A plugin is stateless, starts no threads and never draws. It declares itself in {@link
 * plyworth.shared.scoring.ScoringPlugin} and does its work in the {@link
 * plyworth.shared.scoring.Scorer} it binds to one brief.
 */
package plyworth.shared.scoring;
