package dev.tankwright.controller.drive;

import static dev.tankwright.trace.CountedAssertions.assertEquals;
import static dev.tankwright.trace.CountedAssertions.assertTrue;

import dev.tankwright.controller.board.DeviceProfile;
import dev.tankwright.controller.board.Parameter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UltrasoundDriveTest {
  private final DeviceProfile profile = DeviceProfile.sixLitre();
  private final Wanted wanted = new Wanted();

  @Test
  @DisplayName("degassing drives 6 s of every 10 s, at the centre frequency and full level")
  void pulses() {
    UltrasoundDrive drive = new UltrasoundDrive(profile);
    for (int ms = 0; ms < 60_000; ms += 10) {
      drive.shape(UltrasoundMode.PULSED, 10, wanted);
      assertEquals(ms % 10_000 < 6_000, wanted.ultrasound, "at " + ms + " ms");
      assertEquals(wanted.ultrasound ? 40_000 : 0, wanted.driveFrequencyHz);
      assertEquals(wanted.ultrasound ? 1_000 : 0, wanted.drivePermille);
    }
  }

  @Test
  @DisplayName("cleaning sweeps from one end of the band to the other and back in one period")
  void sweeps() {
    UltrasoundDrive drive = new UltrasoundDrive(profile);
    for (int ms = 0; ms < 5_000; ms += 10) {
      drive.shape(UltrasoundMode.SWEPT, 10, wanted);
      int into = ms % 1_000;
      int fromLowEnd = into <= 500 ? into : 1_000 - into;
      assertEquals(39_000 + 4 * fromLowEnd, wanted.driveFrequencyHz, "at " + ms + " ms");
    }
  }

  @ParameterizedTest(name = "sweep of {0} Hz in {1} ms, scans of {2} ms")
  @CsvSource({
    "5000, 100, 1000",
    "5000, 101, 333",
    "1000, 10000, 7",
    "0, 100, 10",
    "5000, 10000, 1000"
  })
  @DisplayName("whatever the profile and the scan, the frequency stays within centre ± sweep")
  void staysWithinItsWidth(int width, int period, int scan) {
    UltrasoundDrive drive =
        new UltrasoundDrive(
            profile
                .with(Parameter.SCAN_MAXIMUM, 1_000)
                .with(Parameter.SWEEP_WIDTH, width)
                .with(Parameter.SWEEP_PERIOD, period));
    for (int i = 0; i < 100_000; i++) {
      drive.shape(UltrasoundMode.SWEPT, scan, wanted);
      assertTrue(
          Math.abs(wanted.driveFrequencyHz - 40_000) <= width, wanted.driveFrequencyHz + " Hz");
    }
  }

  @Test
  @DisplayName("a time without ultrasound lets the next pulse begin anew")
  void beginsAnew() {
    UltrasoundDrive drive = new UltrasoundDrive(profile);
    drive.shape(UltrasoundMode.PULSED, 5_990, wanted);
    drive.shape(UltrasoundMode.PULSED, 10, wanted);
    drive.shape(UltrasoundMode.OFF, 10, wanted);
    assertEquals(0, wanted.driveFrequencyHz);
    for (int ms = 0; ms < 6_000; ms += 10) {
      drive.shape(UltrasoundMode.PULSED, 10, wanted);
      assertTrue(wanted.ultrasound);
    }
    drive.shape(UltrasoundMode.PULSED, 10, wanted);
    assertEquals(false, wanted.ultrasound);
  }
}
