/**
 * Transactions of SQLite. In come a connection and what is to be done on it. Out goes all of it or
 * nothing.
 */
package dev.tankwright.sqlite;
