/**
 * Files that are replaced as a whole. In come a place and what writes the content. Out goes a file
 * that a reader sees either as it was or as it is now.
 */
package dev.tankwright.replace;
