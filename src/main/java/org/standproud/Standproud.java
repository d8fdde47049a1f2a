package org.standproud;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class Standproud {

  /**
   * Runs the service until it is stopped.
   *
   * @param args Spring Boot command-line properties
   */
  public static void main(String[] args) {
    SpringApplication.run(Standproud.class, args);
  }
}
