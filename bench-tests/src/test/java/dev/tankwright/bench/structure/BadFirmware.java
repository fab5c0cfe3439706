package dev.tankwright.bench.structure;

import java.util.function.IntSupplier;

/** Breaks every rule of firmware once, so that the rules are seen to find it. */
final class BadFirmware {
  float level;
  Object kept;
  long millis;

  void scan(int a, int[] given) throws InterruptedException {
    object();
    array(a);
    references(a);
    grid(a);
    lambda(a);
    joins(a);
    boxes(a);
    copies(given);
    sleeps();
    clock();
  }

  float adds(float a, float b) {
    return a + b;
  }

  int converts(int a) {
    return (int) (a * 1.5);
  }

  int divides(long a) {
    return (int) (a / 3.0f);
  }

  void keeps(int a) {
    level = a;
  }

  int passes(int a) {
    return a > 0 ? (int) Math.sqrt(a) : a;
  }

  int root(int a) {
    return Double.isNaN(a) ? 0 : a;
  }

  void object() {
    kept = new Object();
  }

  void array(int a) {
    kept = new int[a];
  }

  void references(int a) {
    kept = new String[a];
  }

  void grid(int a) {
    kept = new int[a][a];
  }

  void lambda(int a) {
    IntSupplier supplier = () -> a;
    kept = supplier;
  }

  void joins(int a) {
    kept = "a" + a;
  }

  void boxes(int a) {
    kept = a;
  }

  void copies(int[] given) {
    kept = given.clone();
  }

  void sleeps() throws InterruptedException {
    Thread.sleep(millis);
  }

  void clock() {
    millis = System.nanoTime();
  }

  void unreached() {
    kept = new Object();
  }
}
