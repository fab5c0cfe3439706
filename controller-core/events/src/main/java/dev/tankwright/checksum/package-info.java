/** Checksums. In come octets and files. Out go their SHA-256 sums in lower-case hexadecimal. */
package dev.tankwright.checksum;
