/**
 * The window, built of the views in the rooms below. Views render what the session holds and send
 * it labelled edits; nothing is computed on the event thread.
 */
package plyworth.workbench.desktop;
