package dev.tankwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.Configurator;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;

class QuietLoggingTest {
  @Test
  void silencesTheBrokerAndNotUs() {
    LoggerContext context = new LoggerContext();
    assertEquals(
        Configurator.ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY,
        new QuietLogging().configure(context));
    assertFalse(context.getLogger("org.apache.activemq.artemis.core.server").isErrorEnabled());
    assertTrue(context.getLogger("dev.tankwright.delivery").isWarnEnabled());
    assertFalse(context.getLogger("dev.tankwright.delivery").isInfoEnabled());
  }

  @Test
  void isFoundByLogback() {
    assertTrue(
        ServiceLoader.load(Configurator.class).stream()
            .anyMatch(found -> found.type() == QuietLogging.class));
  }
}
