using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Optics;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Packing;
using UnitsNet;

namespace StudioKit.Wording.Tests;

public sealed class CheckTextTests
{
    private static readonly PlanCheck Sag = new()
    {
        Kind = PlanCheckKind.PanelSag,
        Passed = true,
        Demand = new CheckAmount.Measure(Length.FromMillimeters(1)),
        Capacity = new CheckAmount.Measure(Length.FromMillimeters(4)),
        SourceKey = "Timoshenko1959",
        SourceLocator = "art. 30",
    };

    public static TheoryData<CheckAmount, string> Amounts => new()
    {
        { new CheckAmount.Measure(Length.FromMeters(0.4235)), "424 mm" },
        { new CheckAmount.Measure(Mass.FromGrams(1340)), "1.34 kg" },
        { new CheckAmount.Measure(Duration.FromSeconds(150)), "2.5 min" },
        { new CheckAmount.Measure(Torque.FromNewtonMeters(5.12)), "5.12 N·m" },
        { new CheckAmount.Measure(Pressure.FromPascals(4.2e6)), "4.2 MPa" },
        { new CheckAmount.Measure(Temperature.FromDegreesCelsius(48)), "48 °C" },
        { new CheckAmount.HowMany(12), "12" },
        { new CheckAmount.Portion(0.2), "20 %" },
        { new CheckAmount.TwoSides(Length.FromMillimeters(302), Length.FromMillimeters(262)), "302 × 262 mm" },
        { new CheckAmount.Enlargement(new Magnification(0.5)), "1:2" },
        { new CheckAmount.LongRoom(Length.FromMillimeters(650.1), LongItemPlacement.CornerToCorner), "inside corner to corner, up to 650 mm" },
        { new CheckAmount.BagFill(0.834, 0.7), "83 % of the usable volume" },
        { new CheckAmount.OnBody(Mass.FromKilograms(7.42), 0.1184, LoadBand.Comfortable), "7.42 kg, 11.8 % of body mass, comfortable" },
        { new CheckAmount.CellSets(1, 90, 1), "1 set" },
        { new CheckAmount.CellSets(3, 90, 1), "3 sets" },
    };

    [Theory]
    [MemberData(nameof(Amounts))]
    public void An_amount_is_written_with_its_unit(CheckAmount amount, string words) =>
        CheckText.Demand(Sag with { Demand = amount }).Should().Be(words);

    [Fact]
    public void Every_kind_of_check_has_a_name_of_its_own_but_for_the_two_of_a_frame()
    {
        var names = Enum.GetValues<PlanCheckKind>().Select(kind => CheckText.Name(Sag with { Kind = kind, Parts = ["thing", "bag"] })).ToList();

        names.Should().OnlyContain(name => name.Length > 3);
        names.GroupBy(name => name).Where(name => name.Count() > 1).Select(name => name.Key).Should().Equal("Frame can be built");
    }

    [Fact]
    public void A_check_is_named_after_its_parts()
    {
        CheckText.Name(Sag with { Kind = PlanCheckKind.LongThing, Parts = ["longest pipe", "frame pack"] }).Should().Be("Longest pipe on frame pack");
        CheckText.Name(Sag with { Kind = PlanCheckKind.HoldTime, Parts = ["frog"] }).Should().Be("Hold time, frog");
    }

    [Fact]
    public void Every_kind_of_remedy_has_words()
    {
        foreach (var kind in Enum.GetValues<CheckRemedyKind>())
        {
            CheckText.Remedy(Sag with { Passed = false, Remedy = new CheckRemedy(kind) { Parts = ["stool"], Amount = AmountFor(kind), Restand = new KitChange.Restand("screen") { CordPegs = 4 } } })
                .Should().EndWith(".", kind.ToString());
        }
    }

    public static TheoryData<CheckRemedyKind, CheckAmount, string> StructuralRemedies => new()
    {
        { CheckRemedyKind.SheetOfThickness, new CheckAmount.Measure(Length.FromMillimeters(4)), "A sheet of 4 mm." },
        { CheckRemedyKind.WiderSweep, new CheckAmount.Measure(Length.FromMeters(0.9)), "A radius of 900 mm." },
        { CheckRemedyKind.MoreEdgeRoom, new CheckAmount.Measure(Length.FromMillimeters(3.5)), "Leave 3.5 mm at every edge." },
        { CheckRemedyKind.BallastAgainstTipping, new CheckAmount.AddedBallast(Mass.FromKilograms(4), Mass.FromKilograms(2.1), Mass.Zero), "Hang 4.0 kg under the middle, or put 2.1 kg on the windward feet." },
        { CheckRemedyKind.BallastAgainstTipping, new CheckAmount.AddedBallast(Mass.FromKilograms(4), Mass.FromKilograms(2.1), Mass.FromKilograms(1)), "Hang 4.0 kg more under the middle, or put 2.1 kg on the windward feet." },
        { CheckRemedyKind.BallastAgainstSliding, new CheckAmount.AddedBallast(Mass.FromKilograms(0.6), null, Mass.FromKilograms(1)), "Hang 0.6 kg more under the middle." },
    };

    /// <summary>What hangs already is not named again: the person hangs the mass named on top of it.</summary>
    [Theory]
    [MemberData(nameof(StructuralRemedies))]
    public void A_structural_remedy_names_what_would_do(CheckRemedyKind kind, CheckAmount amount, string words) =>
        CheckText.Remedy(Sag with { Passed = false, Remedy = new CheckRemedy(kind) { Amount = amount } }).Should().Be(words);

    /// <summary>What keeps the purpose is said before what stays at home, each with its price.</summary>
    [Fact]
    public void A_target_mass_names_each_change_with_what_it_saves_and_costs()
    {
        LighterStep Step(LighterChange change, double margin) => new(change, Mass.FromGrams(250), Mass.FromKilograms(4), [], new Stops(margin));
        var home = new LeaveAtHomePlan
        {
            Target = Mass.FromKilograms(4),
            Lighter =
            [
                Step(new LighterChange.FewerCells(new([new("sedge", 1)])), 0), Step(new LighterChange.SmallerPanel(Length.FromMillimeters(300), Length.FromMillimeters(310)), -0.12),
                Step(new LighterChange.LighterPipe(StudioKit.Kits.StockedPipe.Embedded[0]), 0.05), Step(new LighterChange.ThinnerSheet(Length.FromMillimeters(2)), 0),
            ],
            Left = ["stool"],
            Lost = [],
            Mass = Mass.FromKilograms(3.9),
            Reached = true,
            ProvenLeast = true,
        };

        var words = CheckText.Remedy(Sag with { Passed = false, Remedy = new CheckRemedy(CheckRemedyKind.LeaveAtHome) { Parts = home.Left, Home = home } });

        words.Should().StartWith("To come down to 4.00 kg: 1. Spare sets of cells: 1 for sedge: 250 g less, no framing lost, white margin ±0 stop.")
            .And.Contain("2. A panel of 300 × 310 mm: 250 g less, no framing lost, white margin -0.12 stop.").And.Contain("4. A sheet of 2 mm:")
            .And.EndWith("Then leave at home: stool; no framing is lost; 3.90 kg remain.");
    }

    [Fact]
    public void Every_finding_of_a_frame_has_words()
    {
        var (pipe, ten) = (new FrameMember("A", 1, FrameMemberRole.Leg, "J1", "J2", Length.Zero, Length.Zero, Length.Zero, Length.Zero, Length.Zero, 1, 1), Length.FromMillimeters(10));
        CheckFinding[] findings =
        [
            .. Enum.GetValues<FrameObstacleKind>().Select(kind => new CheckFinding.OfNoFrame(new FrameObstacle(kind, ten))),
            .. Enum.GetValues<FrameProblemKind>().Select(kind => new CheckFinding.OfFrame(new FrameProblem(kind, ten, ten) { Member = pipe })),
            .. Enum.GetValues<CradleFaultKind>().Select(kind => new CheckFinding.OfCradle(new CradleFault(kind, ten))),
        ];
        CheckCaveat[] caveats = [.. Enum.GetValues<FrameCaveatKind>().Select(kind => new CheckCaveat.OfFrame(new FrameCaveat(kind) { Size = ten, Against = ten }))];

        foreach (var finding in findings)
        {
            CheckText.Remedy(Sag with { Passed = false, Findings = [finding] }).Should().EndWith(".", finding.ToString());
        }

        foreach (var caveat in caveats)
        {
            CheckText.Note(Sag with { Caveats = [caveat] }).Should().EndWith(".", caveat.ToString()).And.NotContain("  ");
        }
    }

    [Fact]
    public void Every_problem_of_a_lit_panel_has_words()
    {
        var ten = Length.FromMillimeters(10);
        var whole = new LightProblem(LightProblemKind.NoExtent)
        {
            Quantity = LightQuantity.PanelWidth,
            Value = 0.01,
            Lowest = 0,
            Highest = 1,
            Flash = 1,
            View = "moth",
            By = ten,
            Pitch = Angle.FromDegrees(-5),
            Right = ten,
            Back = ten,
            Arc = ten,
            Radius = ten,
        };
        LightProblem[] problems =
        [
            .. Enum.GetValues<LightProblemKind>().Select(kind => whole with { Kind = kind }),
            .. Enum.GetValues<LightQuantity>().Where(quantity => quantity != LightQuantity.FlashLight).Select(quantity => whole with { Quantity = quantity }),
            new(LightProblemKind.OutOfRange) { Quantity = LightQuantity.FlashLight, Flash = 1 },
        ];

        foreach (var problem in problems)
        {
            CheckText.Remedy(Sag with { Passed = false, Findings = [new CheckFinding.OfLight("white", "sedge", problem)] })
                .Should().StartWith("white: ").And.EndWith(".").And.NotMatchRegex("  | [,.;]", problem.ToString());
        }

        CheckText.Remedy(Sag with { Passed = false, Findings = [new CheckFinding.OfLight("white", "sedge", whole with { Kind = LightProblemKind.InsideFloor })] })
            .Should().Be("white: sedge reaches 10 mm into the ground.");
    }

    [Fact]
    public void What_is_not_cut_and_what_goes_in_no_bag_is_told_with_its_size()
    {
        string Said(CheckFinding finding) => CheckText.Remedy(Sag with { Passed = false, Findings = [finding] });
        var (long1, short1) = (Length.FromMillimeters(1001.5), Length.FromMillimeters(300));

        Said(new CheckFinding.NotCut(new UncutPiece("A1", long1, null, 2, UncutReason.TooLarge)))
            .Should().Be("'A1' (1001.5 mm) is larger than any stock allows: take larger stock or split the piece.");
        Said(new CheckFinding.NotCut(new UncutPiece("panel", long1, short1, 2, UncutReason.NotEnoughStock)))
            .Should().Be("'panel' (1001.5 mm x 300 mm) is missing 2 times for want of stock: add stock.");
        Said(new CheckFinding.NoPlace(new Misfit("stool", new BoxSize(short1, short1, short1)))).Should().StartWith("stool, 300 mm × 300 mm × 300 mm, goes in no bag");
        Said(new CheckFinding.NoPlace(new Misfit("hide", null))).Should().Be("hide goes in no bag.");
    }

    [Fact]
    public void Every_caveat_of_a_long_thing_has_words()
    {
        var box = new BoxSize(Length.FromMillimeters(600), Length.FromMillimeters(400), Length.FromMillimeters(3));

        foreach (var kind in Enum.GetValues<LongPieceCaveatKind>())
        {
            CheckText.Note(Sag with { Caveats = [new CheckCaveat.OfLongPiece(new LongPieceCaveat(kind, "rucksack", box) { Size = box })] }).Should().EndWith(".", kind.ToString());
        }
    }

    [Fact]
    public void A_refused_flash_is_told_each_way_that_it_can_go()
    {
        var check = Sag with
        {
            Kind = PlanCheckKind.Cradle,
            Parts = ["sedge", "white", "pale"],
            Passed = false,
            Demand = new CheckAmount.Measure(Length.FromMillimeters(260)),
            Findings = [new CheckFinding.OfCradle(new CradleFault(CradleFaultKind.TooNearAnotherRail, Length.FromMillimeters(14)))],
            Remedy = new CheckRemedy(CheckRemedyKind.MoveFlash)
            {
                Amount = new CheckAmount.NearestMoves([new(CradleMoveKind.Up, Length.FromMillimeters(14)), new(CradleMoveKind.RaisePanel, Length.FromMillimeters(40))]),
            },
        };

        CheckText.Name(check).Should().Be("Cradle of sedge, white, pale");
        CheckText.Shortfall(check).Should().Be("held by the frame 260 mm below the panel asked; it would lie 14 mm too near the rail of another flash");
        CheckText.Remedy(check).Should().Be("Move it 14 mm nearer the panel, or with the whole panel 40 mm higher, or give it a stand of its own.");
    }

    [Fact]
    public void A_remedy_names_its_amount_and_parts() =>
        CheckText.Remedy(Sag with { Passed = false, Remedy = new CheckRemedy(CheckRemedyKind.LeaveAtHome) { Parts = ["stool", "hide"], Amount = new CheckAmount.HowMany(2) } })
            .Should().Be("Leave at home: stool, hide; that loses 2 of the set-ups at framings.");

    [Fact]
    public void Without_a_remedy_the_findings_speak_each_for_its_part()
    {
        var check = Sag with { Kind = PlanCheckKind.Exposure, Parts = ["dusk"], Passed = false, Findings = [TooLarge(3, 1.736, 137.5), TooLarge(4, 1.736, 0)] };

        CheckText.Remedy(check).Should().Be(
            "Everything on hand together reaches 1.736, short of 3. 138 mm of extension tubes alone would reach it. Everything on hand together reaches 1.736, short of 4.");
        CheckText.Remedy(check with { Passed = true }).Should().BeEmpty("what passes needs no remedy");
    }

    [Fact]
    public void A_magnification_out_of_reach_says_which_way()
    {
        FindingText.Of(TooLarge(2, null, 30)).Should().Be("The lens comes to no focus on a real subject. 30 mm of extension tubes alone would reach it.");
        FindingText.Of(Out(ReachLimitKind.TooSmall, 0.2, 0.5, 0)).Should().Be("The least that the lens gives is 0.5, above 0.2: take accessories off.");
        FindingText.Of(Out(ReachLimitKind.Between, 0.5, 0.655, 27.5)).Should().Be(
            "0.5 falls in a gap between what the combinations on hand reach, 0.655 nearest. 27.5 mm of extension tubes alone would reach it.");
    }

    private static CheckFinding.OutOfReach TooLarge(double wanted, double? nearest, double extension) => Out(ReachLimitKind.TooLarge, wanted, nearest, extension);

    private static CheckFinding.OutOfReach Out(ReachLimitKind kind, double wanted, double? nearest, double extension) => new(
        new ReachLimit(kind, new Magnification(wanted), nearest is { } m ? new Magnification(m) : null, Length.FromMillimeters(extension)));

    [Fact]
    public void A_shortfall_puts_what_is_asked_before_what_is_given() =>
        CheckText.Shortfall(Sag).Should().Be("1 mm asked, 4 mm given");

    [Fact]
    public void A_shortfall_that_findings_tell_is_a_sentence()
    {
        var check = Sag with { Kind = PlanCheckKind.FrameFit, Passed = false, Findings = [new CheckFinding.OfFrame(new FrameProblem(FrameProblemKind.NoRoomForLegs, Length.FromMillimeters(60), Length.FromMillimeters(90)))] };

        CheckText.Shortfall(check).Should().Be("every pipe fills its sockets asked; A height of 60 mm leaves no room for legs");
        CheckText.Shortfall(check with { Kind = PlanCheckKind.Exposure, Parts = ["white"], Demand = new CheckAmount.HowMany(4), Capacity = new CheckAmount.HowMany(1) })
            .Should().Be("4 framings asked; 1 can be exposed");
    }

    [Fact]
    public void Cells_are_counted_in_sets_for_a_number_of_flashes()
    {
        var check = Sag with
        {
            Kind = PlanCheckKind.Cells,
            Parts = ["sedge"],
            Demand = new CheckAmount.CellSets(3, 420, 2),
            Capacity = new CheckAmount.CellSets(1, 180, 2),
        };

        CheckText.Demand(check).Should().Be("3 sets for 420 flashes in 2 rounds");
        CheckText.Capacity(check).Should().Be("1 set, 180 flashes at that power");
    }

    [Fact]
    public void A_note_says_which_check_its_caveats_belong_to() =>
        CheckText.Note(Sag with { Caveats = [Caveat(StructuralCaveatKind.HundredthOfShortSide), Caveat(StructuralCaveatKind.SagAtLeastThickness)] })
            .Should().Be("Panel sag, its own weight and the subject: A hundredth of the short side is common practice. As thin as its standard lets it be, it sags 2.0 mm.");

    [Fact]
    public void Every_kind_of_structural_caveat_has_words()
    {
        foreach (var kind in Enum.GetValues<StructuralCaveatKind>())
        {
            CheckText.Note(Sag with { Caveats = [Caveat(kind)] }).Should().EndWith(".", kind.ToString()).And.NotMatchRegex("  |^ ", "no amount is left out");
        }
    }

    [Fact]
    public void A_structural_caveat_names_its_numbers()
    {
        string Note(StructuralCaveatKind kind) => CheckText.Note(Sag with { Caveats = [Caveat(kind)] });

        Note(StructuralCaveatKind.SoftenedPipe).Should().EndWith("At 41 °C PVC keeps 62 % of its stiffness and 55 % of its strength.");
        Note(StructuralCaveatKind.RailUnderElbow).Should().EndWith("1/2.5 of the strength at the day's warmth is allowed; the elbow presses the rail down by 2 mm.");
        Note(StructuralCaveatKind.StressWhileBent).Should().EndWith("Held so, the sheet bears 4.2 MPa for as long as it is up.");
        Note(StructuralCaveatKind.GustAtPanelHeight).Should().EndWith("with a safety factor of 2.5 and no lift under the panel.");
    }

    [Fact]
    public void A_check_without_caveats_needs_no_note() => CheckText.Note(Sag).Should().BeEmpty();

    private static CheckCaveat.OfStructure Caveat(StructuralCaveatKind kind) => new CheckCaveat.OfStructure(new StructuralCaveat(kind)
    {
        Size = Length.FromMillimeters(2),
        Stress = Pressure.FromMegapascals(4.2),
        Safety = 2.5,
        Warmth = Temperature.FromDegreesCelsius(41),
        StiffnessKept = 0.62,
        StrengthKept = 0.55,
    });

    private static CheckAmount AmountFor(CheckRemedyKind kind) => kind switch
    {
        CheckRemedyKind.OutOfWind => new CheckAmount.Measure(Speed.FromMetersPerSecond(3)),
        CheckRemedyKind.SheetOfThickness or CheckRemedyKind.WiderSweep or CheckRemedyKind.MoreEdgeRoom => new CheckAmount.Measure(Length.FromMillimeters(5)),
        CheckRemedyKind.BallastAgainstTipping or CheckRemedyKind.BallastAgainstSliding => new CheckAmount.AddedBallast(Mass.FromKilograms(3), Mass.FromKilograms(2), Mass.Zero),
        CheckRemedyKind.MoveFlash => new CheckAmount.NearestMoves([new(CradleMoveKind.Up, Length.FromMillimeters(14))]),
        CheckRemedyKind.LightFromElsewhere => new CheckAmount.Directed(new(Angle.FromDegrees(-120), Angle.FromDegrees(45))),
        _ => new CheckAmount.HowMany(2),
    };
}
