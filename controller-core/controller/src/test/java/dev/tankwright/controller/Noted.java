package dev.tankwright.controller;

import dev.tankwright.controller.board.NoticeKind;

/**
 * A notice that was drained.
 *
 * @param rigMs when, on the rig's own time
 */
public record Noted(NoticeKind kind, int first, int second, long rigMs) {}
