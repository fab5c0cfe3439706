/**
 * What the sequence demands becomes what each actuator should do: heater regulation, ultrasound
 * drive, buzzer. Writes no pin.
 */
package dev.tankwright.controller.drive;
