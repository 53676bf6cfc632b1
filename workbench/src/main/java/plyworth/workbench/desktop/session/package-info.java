/**
 * The study on screen and what is known of it: its history, its ranking, what is selected, what is
 * remembered, and the work behind it.
 */
package plyworth.workbench.desktop.session;
