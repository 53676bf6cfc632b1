/**
 * Numbers with a meaning: ranges of uncertain figures and the units they are entered in.
 *
 * <p>Inside the program every quantity is a {@code double} in one fixed unit that its declaration
 * names; other units exist only where people type or read.
 */
package plyworth.shared.quantity;
