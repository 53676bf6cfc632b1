/** Where the program starts: command line or desktop. */
package plyworth.workbench.app;
