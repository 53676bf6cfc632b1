/** The brief: how it is shown, asked for and read, and how a new study is made from it. */
package plyworth.workbench.desktop.brief;
