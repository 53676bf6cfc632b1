/** A study: everything about one question, as one immutable tree. */
package plyworth.shared.study;
