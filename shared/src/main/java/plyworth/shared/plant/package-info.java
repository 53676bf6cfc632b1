/**
 * What a converter can make and buy: the machines of the plant, the services it sends work to, and
 * the webs on offer to it. A study may carry one plant; whether a structure can be made there is
 * judged by a plugin.
 */
package plyworth.shared.plant;
