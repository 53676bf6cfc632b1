package plyworth.workbench.desktop;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;

/** Moves the mouse and strikes the keys. */
final class Hand {

  private static final int BUTTON = InputEvent.BUTTON1_DOWN_MASK;

  private final Robot robot;

  Hand() {
    try {
      robot = new Robot();
    } catch (AWTException e) {
      throw new IllegalStateException(e);
    }
    robot.setAutoWaitForIdle(true);
  }

  /** Clicks a point of a component, in its own coordinates. */
  void click(Component target, int x, int y) {
    move(target, x, y);
    robot.mousePress(BUTTON);
    robot.mouseRelease(BUTTON);
  }

  void click(Component target) {
    click(target, target.getWidth() / 2, target.getHeight() / 2);
  }

  /** Drags from one point of a component to another in many steps. */
  void drag(Component target, Point from, Point to) {
    move(target, from.x, from.y);
    robot.mousePress(BUTTON);
    int steps = 12;
    for (int i = 1; i <= steps; i++) {
      int x = from.x + (to.x - from.x) * i / steps;
      int y = from.y + (to.y - from.y) * i / steps;
      move(target, x, y);
    }
    robot.mouseRelease(BUTTON);
  }

  /** Turns the wheel one notch over the middle of a component, towards the end of what it shows. */
  void roll(Component target) {
    move(target, target.getWidth() / 2, target.getHeight() / 2);
    robot.mouseWheel(1);
  }

  private void move(Component target, int x, int y) {
    Point corner = Screen.on(target::getLocationOnScreen);
    robot.mouseMove(corner.x + x, corner.y + y);
  }

  /**
   * Strikes a key while others are held. Nothing is waited for while it is down, or a slow machine
   * would repeat it.
   */
  void key(int key, int... held) {
    if (held.length == 1 && held[0] == KeyEvent.VK_ALT) {
      mnemonic(key);
      return;
    }
    robot.setAutoWaitForIdle(false);
    for (int code : held) {
      robot.keyPress(code);
    }
    robot.keyPress(key);
    robot.keyRelease(key);
    for (int i = held.length - 1; i >= 0; i--) {
      robot.keyRelease(held[i]);
    }
    robot.setAutoWaitForIdle(true);
    robot.waitForIdle();
  }

  /**
   * Strikes the letter of a label with Alt. A label takes the keyboard while the letter is down and
   * hands it on when it is up, so it is held until the label has it; a repeat does no harm.
   */
  void mnemonic(int letter) {
    robot.keyPress(KeyEvent.VK_ALT);
    robot.keyPress(letter);
    robot.waitForIdle();
    robot.keyRelease(letter);
    robot.keyRelease(KeyEvent.VK_ALT);
    robot.waitForIdle();
  }

  /** Strikes a key with the menu key of the system. */
  void menuKey(int key, int... more) {
    boolean mac =
        Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx() == InputEvent.META_DOWN_MASK;
    int menu = mac ? KeyEvent.VK_META : KeyEvent.VK_CONTROL;
    int[] held = new int[more.length + 1];
    held[0] = menu;
    System.arraycopy(more, 0, held, 1, more.length);
    key(key, held);
  }

  /** Types letters, digits, blanks and plain signs. */
  void type(String text) {
    for (int letter : text.chars().toArray()) {
      int key = KeyEvent.getExtendedKeyCodeForChar(letter);
      if (Character.isUpperCase(letter)) {
        key(key, KeyEvent.VK_SHIFT);
      } else {
        key(key);
      }
    }
  }

  /** What is on the screen now. */
  java.awt.image.BufferedImage picture(Rectangle area) {
    return robot.createScreenCapture(area);
  }
}
