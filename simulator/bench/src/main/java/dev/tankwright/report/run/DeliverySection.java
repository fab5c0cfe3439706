package dev.tankwright.report.run;

import dev.tankwright.report.page.Html;
import dev.tankwright.report.results.EventsSeen;

/** What became of the events on their way out. */
final class DeliverySection {
  private DeliverySection() {}

  /** The delivery in a few words. */
  static String inShort(EventsSeen seen) {
    if (!seen.published()) {
      return "not published";
    }
    return seen.received() + " of " + seen.sent() + " received";
  }

  static String of(EventsSeen seen) {
    Html html = new Html();
    if (!seen.published()) {
      html.raw("<p>No broker was named, so no events were published.</p>\n");
    } else {
      verdict(html, seen);
      counts(html, seen);
    }
    if (!seen.failure().isEmpty()) {
      html.raw("<p class=\"is-failed\">").text(seen.failure()).raw("</p>\n");
    }
    return html.toString();
  }

  private static void verdict(Html html, EventsSeen seen) {
    boolean complete = seen.complete();
    html.raw("<p class=\"delivery is-").raw(complete ? "held" : "failed").raw("\">");
    html.shape(complete ? "held" : "failed").raw("<span class=\"word\">");
    html.raw(complete ? "Every event arrived" : "Not every event was received");
    html.raw("</span></p>\n");
  }

  private static void counts(Html html, EventsSeen seen) {
    html.raw("<table class=\"pairs\">\n<tbody>\n").pair("Broker", seen.broker());
    html.pair("Committed for sending", Integer.toString(seen.sent()));
    html.pair("Received, without duplicates", Integer.toString(seen.received()));
    html.pair("Received again", Integer.toString(seen.doubled()));
    html.pair("Not received", Integer.toString(seen.undelivered().size()));
    html.raw("</tbody>\n</table>\n");
    if (seen.doubled() > 0) {
      html.raw("<p>Delivery is at least once: a duplicate has the id of the first and is ");
      html.raw("dropped.</p>\n");
    }
    if (!seen.undelivered().isEmpty()) {
      html.raw("<h3>Not received</h3>\n<ul class=\"ids\">\n");
      for (String id : seen.undelivered()) {
        html.raw("<li><code>").text(id).raw("</code></li>\n");
      }
      html.raw("</ul>\n");
    }
  }
}
