/**
 * Bath profiles as files: their keys, their rules, the baths that come with the program. Profile
 * files enter, and baths that are to be written. Baths leave, checked, or the text of a profile
 * file.
 */
package dev.tankwright.scenario.profile;
