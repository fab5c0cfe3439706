/**
 * JSON documents as trees, and the look of those that people read. In come a parser at a value, or
 * a generator. Out go maps, lists and values, or indented text.
 */
package dev.tankwright.json;
