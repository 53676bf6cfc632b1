/** What views are made of: commands, forms, tables, drawings and charts that know no study. */
package plyworth.workbench.desktop.part;
