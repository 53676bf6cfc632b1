package plyworth.workbench.desktop.brief;

/** The pages of the form of a brief, in the order in which they are asked. */
public enum BriefSection {
  /** What is asked, and in which terms. */
  QUESTION,
  /** What is packed, and what harms it. */
  PRODUCT,
  /** How long, where and how it keeps. */
  STORAGE,
  /** The pack and its dimensions. */
  PACK,
  /** The filling machine. */
  MACHINE,
  /** Market and order. */
  MARKET
}
