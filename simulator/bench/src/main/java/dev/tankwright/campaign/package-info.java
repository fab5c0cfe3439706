/**
 * Campaigns: one scenario run many times, with every fault in every phase at many moments over the
 * tolerances of the parts. Knows nothing of how results are shown.
 */
package dev.tankwright.campaign;
