/**
 * What ultrasound does in the bath: cavitation activity, removal of soil, marks on foil. Estimates
 * throughout; they compare states of one bath and predict no cleanliness.
 */
package dev.tankwright.plant.effects;
