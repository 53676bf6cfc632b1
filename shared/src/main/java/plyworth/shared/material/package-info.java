/** Generic materials, their sourced properties, and the library that carries them. */
package plyworth.shared.material;
