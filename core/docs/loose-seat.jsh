// What a loose seat costs: one invented stud roller in three seats. Run it with
//   java -jar core/target/holdfast.jar core/docs/loose-seat.jsh
// It prints four tables and writes the plot loose-seat.svg beside this script, or into the current folder.

// The roller, all of it invented: a 40 mm ring on an 18 mm stud, drilled for grease, 16 needles.
var stud = InnerPart.hollow(Material.of("16MnCr5"), mm(3)).withRoughness(um(2))
var ratings = LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING)
var needles = RollerInterior.describe()
    .rollers(16, mm(3.5), mm(12), ValueOrigin.ESTIMATED)
    .pitchDiameter(mm(23), ValueOrigin.ESTIMATED)
    .clearance(um(20), ValueOrigin.ESTIMATED)
    .profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
    .build()

// The lever and the duty, invented too.
var lever = OuterPart.ring(Material.of("EN-GJS-600-3"), mm(50)).withRoughness(um(4))
var seatLength = mm(16)
var friction = FrictionBand.of(0.08, 0.20)
var load = kN(2.1)
var speed = rpm(180)
var shank = ShankSection.drilled(mm(18), mm(3))
var slope = StudDeflection.of(shank, StudLoad.radial(load, mm(20), mm(0.8)), stud.material(), seatLength).tilt()

// Torque through the stud while the nut gets 75 N·m: M18x1.5, friction 0.10 to 0.16.
var worst = new Friction(0.16, 0.16, 0.10, 0.10)
var nut = Tightening.of(ScrewThread.of("M18x1.5")).bore(mm(3)).bearingFace(mm(24.8), mm(19)).friction(worst)
var throughStud = nut.preload(Nm(75)).greatest().threadTorque()

// The face under the flange runs out by 8 µm over 32 mm.
SeatOptions seats(double crown) {
  var price = SeatPrice.of(needles, ratings).duty(load, speed).seat(mm(18), seatLength).ring(mm(40), mm(crown))
      .bending(slope).face(um(8), mm(32));
  var fits = List.of(Fit.of(mm(18), "H7/h7"), Fit.of(mm(18), "H7/k6"), Fit.of(mm(18), "H7/p6"));
  return SeatOptions.of(price, fits, stud, lever, seatLength, friction, throughStud);
}
var flat = seats(0)
var crowned = seats(500)

String cell(double value, int decimals, int width) {
  var text = Numbers.fixed(value, decimals);
  return " ".repeat(Math.max(1, width - text.length())) + text;
}

String hours(OperatingTime time) {
  var text = Numbers.significant(time.hours(), 2);
  return " ".repeat(19 - text.length()) + text;
}

// One line a pair: lean, life ratio with a flat and with a crowned ring, hours with the flat ring. The recalled hours rest on
// memory and are shown only to keep anyone from taking them for confirmed ones.
void lifeTable() {
  System.out.println("                             greatest lean               nut tight   hours at greatest lean, flat");
  System.out.println("seat   pair      clearance   lean    flat  crown R500    flat        L10 x ratio  recalled [memory]");
  for (int i = 0; i < 3; i++) {
    var option = flat.options().get(i);
    var gaps = List.of(option.greatestClearance(), option.fit().meanClearance(), option.leastClearance());
    for (int k = 0; k < 3; k++) {
      var pair = option.price().pairs().get(k);
      System.out.println((k == 0 ? option.fit().designation() : "     ") + "  " + List.of("loosest ", "mean    ", "tightest").get(k)
          + cell(gaps.get(k).in(UM), 1, 8) + " µm" + cell(pair.tilt().studTilt().in(MRAD), 2, 7) + cell(pair.lifeRatio(), 2, 8)
          + cell(crowned.options().get(i).price().pairs().get(k).lifeRatio(), 2, 12)
          + cell(pair.lifeRatioNutTight().get(), 2, 8) + hours(option.price().hours(pair)) + hours(pair.recalledHours(speed)));
    }
  }
}

// One line a seat: what it takes to press, what to hold at the head of the stud, how near the lever is to yield.
void pressTable() {
  System.out.println("seat   press force, kN   to hold at the head, N·m   safety of the lever");
  for (var option : flat.options()) {
    var force = option.pressForce().map(f -> Numbers.fixed(f.least().in(KN), 1) + " to " + Numbers.fixed(f.greatest().in(KN), 1));
    var safety = option.housing().map(limit -> limit.safety()).filter(s -> s.isPresent())
      .map(s -> Numbers.fixed(s.getAsDouble(), 1)).orElse("not stressed");
    var way = force.orElse("slips in");
    System.out.println(option.fit().designation() + "  " + way + " ".repeat(18 - way.length())
        + Numbers.fixed(option.torqueToBeHeld().in(N_M), 1) + "                       " + safety);
  }
}

// Which published limits of misalignment the loosest pairs keep, flat ring.
void limitTable() {
  for (var option : flat.options()) {
    option.price().comparison().stream().filter(c -> c.pair().equals("loosest pair"))
        .forEach(c -> System.out.println(option.fit().designation() + "  " + (c.passes() ? "within " : "above  ") + c.limit()));
  }
}

void convergence() {
  System.out.println("laminae   equal, 1 mrad   2.25 mrad   graded, 1 mrad   2.25 mrad");
  var bearing = needles.bearing(ratings);
  for (int n : List.of(5, 10, 20, 30, 50, 100, 200, 400)) {
    var equal = bearing.spacing(LaminaSpacing.EQUAL).laminae(n);
    var graded = bearing.laminae(n);
    System.out.println(cell(n, 0, 7) + cell(equal.life(load, mrad(1)).lifeRatio(), 4, 16)
        + cell(equal.life(load, mrad(2.25)).lifeRatio(), 4, 12) + cell(graded.life(load, mrad(1)).lifeRatio(), 4, 17)
        + cell(graded.life(load, mrad(2.25)).lifeRatio(), 4, 12));
  }
}
lifeTable()
System.out.println()
pressTable()
System.out.println()
limitTable()
System.out.println()
convergence()

TiltPicture.Mark mark(SeatOption option) {
  return new TiltPicture.Mark("loosest " + option.fit().designation(), option.price().loosest().tilt().raceways());
}
var marks = flat.options().stream().map(o -> mark(o)).toList()
var picture = TiltPicture.of(needles.bearing(ratings), List.of(load.times(0.5), load, load.times(2)), marks)
var folder = Files.isDirectory(Path.of("core/docs")) ? Path.of("core/docs") : Path.of("")
Path written = Files.writeString(folder.resolve("loose-seat.svg"), picture.svg())
