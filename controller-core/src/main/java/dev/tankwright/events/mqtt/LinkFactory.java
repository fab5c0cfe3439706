package dev.tankwright.events.mqtt;

import org.eclipse.paho.client.mqttv3.MqttException;

/** Makes a new link for each attempt to connect. */
@FunctionalInterface
interface LinkFactory {
  BrokerLink create() throws MqttException;
}
