/**
 * The frame, the style and the policy that every HTML page has in common; it knows no results. In
 * come templates, texts and markup. Out go pages that need nothing else and fetch nothing.
 */
package dev.tankwright.report.page;
