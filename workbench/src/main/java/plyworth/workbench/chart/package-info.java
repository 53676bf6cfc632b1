/** Chart models, which know no drawing, and their rendering, which knows no windows. */
package plyworth.workbench.chart;
