/**
 * Folders and documents on disk: written whole or not at all, listed with checksums, read back with
 * messages that name the place. In come bytes and paths. Out go files, checked lists, and the
 * members of JSON documents.
 */
package dev.tankwright.report.files;
