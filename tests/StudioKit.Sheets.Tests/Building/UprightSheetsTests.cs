using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Building;

public sealed class UprightSheetsTests
{
    private const string Kit = """
        kit: Reed bed
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses:
          - {name: reed 60, focal-length: 60 mm, magnifications: [10:1]}
        flashes:
          - {name: sedge, guide-number: 36 m}
          - {name: willow, guide-number: 36 m}
        frame: {pipe: pvc-u-20x1.5, fittings: pvc-u-20, longest-piece: 600 mm}
        uprights:
          - {name: staked, width: 500 mm, height: 400 mm, over-ground: 10 cm, lean: 10°, cord-pegs: 4, peg-hold: 3 kg}
          - {name: footed, carrier: feet, width: 400 mm, height: 300 mm, ballast: 2 kg}
        set-ups:
          - {name: where it grows, kind: white-background, upright: staked, lights: [{flash: sedge, role: behind, distance: 30 cm}, {flash: willow, role: key, distance: 40 cm}]}
          - {name: on the path, kind: white-background, upright: footed, lights: [{flash: sedge, role: behind, distance: 30 cm}, {flash: willow, role: key, distance: 40 cm}]}

        """;

    private static readonly Plan Plan = KitPlanner.Plan(KitReader.Parse(Kit, "kit.yaml", PartsLibrary.Embedded));

    public static TheoryData<int> EveryUpright => [.. Enumerable.Range(0, Plan.Workshop!.Uprights.Count)];

    [Fact]
    public void A_kit_without_a_frame_has_a_build_sheet_with_every_piece_clip_and_step()
    {
        var laid = Paginator.Lay(BuildSheet.WithoutFrame(Plan, Plan.Workshop!, Pages.Stamp, new PageSetup(Paper.A4)));
        var text = string.Join(' ', laid.Document.Pages.SelectMany(Pages.Labels));

        laid.Problems.Should().BeEmpty();
        foreach (var upright in Plan.Workshop!.Uprights)
        {
            text.Should().Contain($"Upright sheet: {upright.Name}");
            upright.Pieces.Should().OnlyContain(piece => text.Contains(piece.Label, StringComparison.Ordinal));
        }

        text.Should().Contain("take it down from Beaufort").And.Contain("it must hold 3.0 kg").And.Contain("Shopping list").And.Contain("Pull one as a test").And.Contain("Packing down");
    }

    /// <summary>The drawn length over the scale is the length that the text says, to half its last digit.</summary>
    [Theory]
    [MemberData(nameof(EveryUpright))]
    public void Every_measure_of_an_upright_sheet_is_as_long_as_it_says(int place)
    {
        var upright = Plan.Workshop!.Uprights[place];
        foreach (var mark in new[] { UprightDrawing.Front(upright), UprightDrawing.Side(upright) }.SelectMany(drawing => drawing.Marks).OfType<Dimension>())
        {
            // What leans is drawn as it is seen, and its own length is written beside it.
            if (!mark.Text.Contains("along", StringComparison.Ordinal))
            {
                CutFormat.CutLength(UnitsNet.Length.FromMillimeters(Math.Round(mark.From.DistanceTo(mark.To), 1))).Should().Be(mark.Text);
            }
        }
    }

    [Theory]
    [MemberData(nameof(EveryUpright))]
    public void Every_step_has_words_and_no_step_takes_anything_away(int place)
    {
        var upright = Plan.Workshop!.Uprights[place];
        var marks = 0;
        foreach (var step in upright.Assembly)
        {
            UprightStepText.Of(step, upright).Should().EndWith(".");
            var shown = step is UprightStep.PullStake ? marks : UprightDrawing.Step(upright, step).Marks.Count;
            shown.Should().BeGreaterThanOrEqualTo(step is UprightStep.MarkClips or UprightStep.LookOver ? 0 : marks);
            marks = Math.Max(marks, step is UprightStep.MarkClips or UprightStep.LookOver or UprightStep.JoinPoles ? 0 : shown);
        }
    }

    /// <summary>Whatever was put up by a step of its own comes down by one.</summary>
    [Theory]
    [MemberData(nameof(EveryUpright))]
    public void What_goes_up_comes_down_again(int place)
    {
        var upright = Plan.Workshop!.Uprights[place];
        var down = upright.PackingDown;

        down.Contains(UprightPackingStep.UntieCords).Should().Be(upright.Assembly.Contains(UprightStep.TieCords));
        down.Contains(UprightPackingStep.LiftBallast).Should().Be(upright.Assembly.Contains(UprightStep.LayBallast));
        down.Contains(UprightPackingStep.PullStakes).Should().Be(upright.Assembly.Contains(UprightStep.DriveStakes));
        down.Contains(UprightPackingStep.PartFeet).Should().Be(upright.Assembly.Contains(UprightStep.StandFeet));
        down.Contains(UprightPackingStep.UnclipBar).Should().Be(upright.Assembly.Contains(UprightStep.ClipBar));
        down.Contains(UprightPackingStep.PartPoles).Should().Be(upright.Assembly.Contains(UprightStep.JoinPoles));
        down[0].Should().Be(UprightPackingStep.TakeSheet, "the wind takes the sheet first");
        down.Select(step => UprightStepText.Of(step, upright)).Should().OnlyContain(text => text.EndsWith('.'));
    }

    [Fact]
    public void Cut_list_and_tables_hold_the_pieces_of_upright_sheets()
    {
        var files = BuildTables.Of(Plan.Workshop!).ToDictionary(file => file.Name, file => System.Text.Encoding.UTF8.GetString(file.Content.Span));

        files["pipe-cuts.csv"].Should().Contain("half foot of footed").And.Contain("pole of staked");
        files["sheet-cuts.csv"].Should().Contain("footed").And.Contain("staked");
        files["shopping.csv"].Should().MatchRegex("ground peg, [0-9]+ mm long, for staked");
    }
}
