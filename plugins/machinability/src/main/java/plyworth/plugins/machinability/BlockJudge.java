package plyworth.plugins.machinability;

import static plyworth.plugins.machinability.MachinabilityLayerwise.HEAT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.INITIATION;
import static plyworth.plugins.machinability.MachinabilityLayerwise.SEALANT;
import static plyworth.plugins.machinability.MachinabilityLayerwise.UPPER_LIMIT;

import plyworth.shared.brief.Machine.SealZone;
import plyworth.shared.scoring.Block;

/**
 * Judges whole blocks as {@link Judge} does, and works out no more than somebody asks for.
 *
 * <p>Every structure needs the curve of its thickest zone. The plain zone is left out where the
 * outside bears less than the sealant, and where even the hottest jaws that the outside bears are
 * too cool. How long a seal takes is left out for what is blocked, and, unless it is asked for
 * itself, where the seal is made within the dwell of the machine and filling limits the cycle
 * anyhow. The rows that are left are gathered into full tiles. One thread at a time may use it.
 */
final class BlockJudge {

  private static final int ROWS = SeriesColumns.ROWS;

  private static final int DWELL = Criteria.indexOf(Criteria.SEAL_DWELL);
  private static final int WINDOW = Criteria.indexOf(Criteria.SEAL_WINDOW);
  private static final int PACKS = Criteria.indexOf(Criteria.PACKS_PER_MINUTE);
  private static final int ATTACK = Criteria.indexOf(Criteria.ATTACK);

  private final Settings settings;
  private final Sealing sealing;
  private final FillingCycle empty;
  private final Attack attack;
  private final Judge judge;
  private final boolean timed;
  private final boolean filledAnyhow;
  private final double held;

  private final SealTile tile = new SealTile();
  private final Walls plainWeb = Walls.room();
  private final int[] rows = new int[ROWS];
  private int pending;
  private KeptCurves kept = KeptCurves.room(0);
  private double[] remaining = {};
  private double[] coolest = {};
  private double[] face = {};

  BlockJudge(Settings settings, Attack attack, Judge judge, boolean timed) {
    this.settings = settings;
    this.sealing = new Sealing(settings);
    this.empty = FillingCycle.of(settings, 0);
    this.attack = attack;
    this.judge = judge;
    this.timed = timed;
    held = settings.machine().dwellS();
    FillingCycle aLittleSlower = FillingCycle.of(settings, held * (1 + 1e-6));
    filledAnyhow = aLittleSlower.unlimited() >= aLittleSlower.fillLimit();
  }

  /** Writes windows, classes of attack, blocks, dwells and packs a minute; see the class. */
  void judge(Block block) {
    makeRoom(block.blocked.length);
    for (int from = 0; from < block.size; from += ROWS) {
      thickest(block, from, Math.min(ROWS, block.size - from));
    }
    plain(block);
    for (int row = 0; row < block.size; row++) {
      time(block, row);
    }
    times(block);
  }

  private void makeRoom(int capacity) {
    if (remaining.length < capacity) {
      kept = KeptCurves.room(capacity);
      remaining = new double[capacity];
      coolest = new double[capacity];
      face = new double[capacity];
    }
  }

  private void thickest(Block block, int from, int count) {
    tile.read(block.states, from, count);
    tile.curves.fit(settings.thickest(tile.stack, tile.web));
    tile.curves.remaining(held, tile.remaining);
    tile.curves.keep(kept, from, count);
    System.arraycopy(tile.remaining, 0, remaining, from, count);
    System.arraycopy(tile.faceLimit, 0, face, from, count);
    windows(from, count, block.low[WINDOW]);
    blocks(block, from, count);
    if (settings.machine().zone() != SealZone.ONE_ON_ONE) {
      open(block, from, count);
    }
  }

  /** The windows as far as the thickest zone decides; the others as wide as the outside allows. */
  private void windows(int from, int count, double[] window) {
    boolean same = settings.machine().zone() == SealZone.ONE_ON_ONE;
    for (int i = 0; i < count; i++) {
      double left = tile.remaining[i];
      double limit = tile.faceLimit[i];
      double upper = tile.upperLimit[i];
      double cool = sealing.jawFor(sealing.target(tile.initiation[i]), left);
      double hot = limit <= upper || !same ? limit : sealing.hottest(limit, upper, left);
      coolest[from + i] = cool;
      window[from + i] = sealing.window(cool, hot);
    }
  }

  private void blocks(Block block, int from, int count) {
    double[] window = block.low[WINDOW];
    double[] attackClass = block.low[ATTACK];
    for (int i = 0; i < count; i++) {
      int verdict = attack.verdict(tile.attacks[i]);
      attackClass[from + i] = verdict;
      block.blocked[from + i] =
          judge.blocked(tile.initiation[i], tile.sealantUm[i], window[from + i], verdict);
    }
  }

  /** Rows whose plain zone can decide. */
  private void open(Block block, int from, int count) {
    for (int i = 0; i < count; i++) {
      boolean plain = !(tile.faceLimit[i] <= tile.upperLimit[i]);
      if (plain && (block.blocked[from + i] & Judge.NO_WINDOW) == 0) {
        add(from + i);
        if (pending == ROWS) {
          plain(block);
        }
      }
    }
  }

  private void add(int row) {
    rows[pending++] = row;
  }

  /** The plain zones of the rows that wait for it. */
  private void plain(Block block) {
    if (pending > 0) {
      plainWeb.readPlain(block.states, HEAT, rows, pending);
      tile.plainCurves.fit(settings.plain(tile.stack, plainWeb));
      tile.plainCurves.remaining(held, tile.remainingPlain);
      for (int i = 0; i < pending; i++) {
        plain(block, rows[i], tile.remainingPlain[i]);
      }
      pending = 0;
    }
  }

  private void plain(Block block, int row, double remainingPlain) {
    double upper = block.states[UPPER_LIMIT][row];
    double hottest = sealing.hottest(face[row], upper, remainingPlain);
    double window = sealing.window(coolest[row], hottest);
    block.low[WINDOW][row] = window;
    block.blocked[row] =
        judge.blocked(
            block.states[INITIATION][row],
            block.states[SEALANT + 2][row],
            window,
            (int) block.low[ATTACK][row]);
  }

  private void time(Block block, int row) {
    double missing = sealing.missing(block.states[INITIATION][row]);
    block.low[DWELL][row] = Double.NaN;
    if (block.blocked[row] != 0) {
      packs(block, row, 0);
    } else if (!timed && filledAnyhow && remaining[row] <= missing) {
      packs(block, row, empty.fillLimit());
    } else {
      tile.missing[pending] = missing;
      add(row);
      if (pending == ROWS) {
        times(block);
      }
    }
  }

  /** The times of the rows that wait for it. */
  private void times(Block block) {
    if (pending > 0) {
      tile.curves.take(kept, rows, pending);
      tile.curves.time(tile.missing, tile.time);
      for (int i = 0; i < pending; i++) {
        double dwell = sealing.dwell(block.states[INITIATION][rows[i]], tile.time[i]);
        block.low[DWELL][rows[i]] = dwell;
        double closed = settings.machine().dwellFactor() * dwell;
        packs(block, rows[i], empty.held(closed).packsPerMinute());
      }
      pending = 0;
    }
  }

  private static void packs(Block block, int row, double packs) {
    block.low[PACKS][row] = packs;
    block.provided[0][row] = packs;
  }
}
