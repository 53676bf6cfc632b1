/** The example studies, read from their files and scored by the plugins that come along. */
package plyworth.workbench.studies;
