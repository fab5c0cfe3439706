package dev.tankwright.trace;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.function.Executable;

/**
 * The assertions that tests of requirements use: Jupiter's own, each counted as it is executed. A
 * call counts once, whether it holds or not. Safe for use by several threads; who counts for whom
 * is known only while tests run one after the other.
 */
public final class CountedAssertions {
  private static final AtomicLong EXECUTED = new AtomicLong();

  private CountedAssertions() {}

  /** How many assertions have been executed in this virtual machine so far. */
  static long executed() {
    return EXECUTED.get();
  }

  private static void count() {
    EXECUTED.incrementAndGet();
  }

  public static void assertTrue(boolean condition) {
    count();
    Assertions.assertTrue(condition);
  }

  public static void assertTrue(boolean condition, String message) {
    count();
    Assertions.assertTrue(condition, message);
  }

  public static void assertTrue(boolean condition, Supplier<String> message) {
    count();
    Assertions.assertTrue(condition, message);
  }

  public static void assertFalse(boolean condition) {
    count();
    Assertions.assertFalse(condition);
  }

  public static void assertFalse(boolean condition, String message) {
    count();
    Assertions.assertFalse(condition, message);
  }

  public static void assertFalse(boolean condition, Supplier<String> message) {
    count();
    Assertions.assertFalse(condition, message);
  }

  public static void assertNull(Object actual) {
    count();
    Assertions.assertNull(actual);
  }

  public static void assertNull(Object actual, String message) {
    count();
    Assertions.assertNull(actual, message);
  }

  public static void assertNull(Object actual, Supplier<String> message) {
    count();
    Assertions.assertNull(actual, message);
  }

  public static void assertNotNull(Object actual) {
    count();
    Assertions.assertNotNull(actual);
  }

  public static void assertNotNull(Object actual, String message) {
    count();
    Assertions.assertNotNull(actual, message);
  }

  public static void assertSame(Object expected, Object actual) {
    count();
    Assertions.assertSame(expected, actual);
  }

  public static void assertSame(Object expected, Object actual, String message) {
    count();
    Assertions.assertSame(expected, actual, message);
  }

  public static void assertEquals(Object expected, Object actual) {
    count();
    Assertions.assertEquals(expected, actual);
  }

  public static void assertEquals(Object expected, Object actual, String message) {
    count();
    Assertions.assertEquals(expected, actual, message);
  }

  public static void assertEquals(Object expected, Object actual, Supplier<String> message) {
    count();
    Assertions.assertEquals(expected, actual, message);
  }

  public static void assertEquals(int expected, int actual) {
    count();
    Assertions.assertEquals(expected, actual);
  }

  public static void assertEquals(int expected, int actual, String message) {
    count();
    Assertions.assertEquals(expected, actual, message);
  }

  public static void assertEquals(int expected, int actual, Supplier<String> message) {
    count();
    Assertions.assertEquals(expected, actual, message);
  }

  public static void assertEquals(long expected, long actual) {
    count();
    Assertions.assertEquals(expected, actual);
  }

  public static void assertEquals(long expected, long actual, String message) {
    count();
    Assertions.assertEquals(expected, actual, message);
  }

  public static void assertEquals(long expected, long actual, Supplier<String> message) {
    count();
    Assertions.assertEquals(expected, actual, message);
  }

  public static void assertEquals(double expected, double actual, double delta) {
    count();
    Assertions.assertEquals(expected, actual, delta);
  }

  public static void assertEquals(double expected, double actual, double delta, String message) {
    count();
    Assertions.assertEquals(expected, actual, delta, message);
  }

  public static void assertEquals(
      double expected, double actual, double delta, Supplier<String> message) {
    count();
    Assertions.assertEquals(expected, actual, delta, message);
  }

  public static void assertNotEquals(Object unexpected, Object actual) {
    count();
    Assertions.assertNotEquals(unexpected, actual);
  }

  public static void assertNotEquals(Object unexpected, Object actual, String message) {
    count();
    Assertions.assertNotEquals(unexpected, actual, message);
  }

  public static void assertArrayEquals(int[] expected, int[] actual) {
    count();
    Assertions.assertArrayEquals(expected, actual);
  }

  public static void assertArrayEquals(int[] expected, int[] actual, String message) {
    count();
    Assertions.assertArrayEquals(expected, actual, message);
  }

  public static void assertArrayEquals(int[] expected, int[] actual, Supplier<String> message) {
    count();
    Assertions.assertArrayEquals(expected, actual, message);
  }

  public static void assertArrayEquals(byte[] expected, byte[] actual) {
    count();
    Assertions.assertArrayEquals(expected, actual);
  }

  public static <T extends Throwable> T assertThrows(Class<T> expected, Executable executable) {
    count();
    return Assertions.assertThrows(expected, executable);
  }

  public static <T extends Throwable> T assertThrows(
      Class<T> expected, Executable executable, String message) {
    count();
    return Assertions.assertThrows(expected, executable, message);
  }

  public static <T extends Throwable> T assertThrows(
      Class<T> expected, Executable executable, Supplier<String> message) {
    count();
    return Assertions.assertThrows(expected, executable, message);
  }

  public static void assertDoesNotThrow(Executable executable) {
    count();
    Assertions.assertDoesNotThrow(executable);
  }

  public static void fail(String message) {
    count();
    Assertions.fail(message);
  }
}
