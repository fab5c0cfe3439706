package dev.tankwright.events.mqtt;

import org.eclipse.paho.client.mqttv3.MqttException;

/** Makes a new link for each attempt to connect. */
@FunctionalInterface
interface LinkFactory {
  /**
   * Makes a link that is not open yet.
   *
   * @param number which attempt this is, from 1
   */
  BrokerLink create(long number) throws MqttException;
}
