/**
 * The views that a decision is made by: trade-off, robustness, comparison and the page to decide
 * on.
 */
package plyworth.workbench.desktop.decision;
