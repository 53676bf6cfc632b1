/**
 * Strict reading and stable writing of JSON and CSV.
 *
 * <p>Whatever is wrong with a file is said with the file, the place in it, what is wrong and what
 * would be right. No type of a parsing library appears in a signature.
 */
package plyworth.shared.data;
