using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning.Changes;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;
using UnitsNet;
using Xunit.Abstractions;

namespace StudioKit.Web.Tests.Engine;

/// <summary>What the button of a failing check does to the kit's text, and where its links lead.</summary>
public sealed class MendsTests(ITestOutputHelper output)
{
    private static readonly int Kits = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 3;

    // Light that goes to and fro under the sheet is nothing to what fails here, and costs nearly all of the time.
    private static readonly LightSpec Behind = new() { Flash = "rush light", Role = LightRole.Behind, Distance = Length.FromMillimeters(300) };

    private static readonly string Fen = Asked.Demo()
        .Replace("  width: 600 mm", "  underside-reflectance: 0\n  width: 600 mm", StringComparison.Ordinal);

    // Ways to spoil the demo kit: a place of its text, and what is written there instead.
    private static readonly (string At, string[] Instead)[] Spoils =
    [
        ("  width: 600 mm", ["  width: 250 mm", "  width: 31 cm", "  width: 1.4 m"]),
        ("  depth: 400 mm", ["  depth: 150 mm", "  depth: 900 mm"]),
        ("  height: 500 mm", ["  height: 30 mm", "  height: 250 mm", "  height: 1 m"]),
        ("magnifications: [1:4, 1:2, 1:1]   # 1:1", ["magnifications: [1:4, 3:1, 1:1]   # 1:1", "magnifications: 4:1   # 1:1"]),
        ("role: below, distance: 45 cm", ["role: below, distance: 55 cm ± 1 cm", "role: below, distance: 30 mm", "role: below, distance: 0.7 m"]),
        ("    spare-sets: 2", ["    spare-sets: 0"]),
        ("part: opal-acrylic-3", ["part: opal-acrylic-2"]),
        ("stretchers: always", ["stretchers: never"]),
        ("pegs: {count: 4, hold: 3 kg, guys: yes}", ["pegs: {count: 1, hold: 200 g, guys: no}", "pegs: {count: 0}"]),
        ("pipe: pvc-u-25x1.25", ["pipe: pvc-u-20x1.5"]),
        ("inside: 620 mm x 320 mm x 220 mm", ["inside: 400 mm x 320 mm x 220 mm"]),
    ];

    [Theory]
    [InlineData("  width: 600 mm", "  width: 250 mm", "PanelSize", "Cut the panel to ")]
    [InlineData("role: below, distance: 45 cm", "role: below, distance: 60 cm", "FlashBelow", "Move the sedge to 499 mm below the panel")]
    [InlineData("magnifications: [1:4, 1:2, 1:1]   # 1:1", "magnifications: [1:4, 3:1, 1:1]   # 1:1", "Magnification/reed 55/3:1", "reed 55")]
    public void The_button_says_what_it_does_and_the_check_then_passes(string at, string instead, string check, string says)
    {
        var asked = new Asked();
        var text = Spoilt(at, instead);

        var offer = Search(asked, text, check);

        output.WriteLine($"{check}: {offer.Label} {offer.Note}");
        offer.Label.Should().Contain(says);
        Mended(asked, text, check, offer);
    }

    [Fact]
    public void Whatever_is_offered_for_spoilt_kits_mends_the_check_that_it_is_offered_for()
    {
        var offers = 0;
        Any().Sample(
            text =>
            {
                var asked = new Asked();
                foreach (var check in asked.Plan(text).Checks.Where(check => !check.Passed).DistinctBy(check => check.Id).Take(3))
                {
                    if (Search(asked, text, check.Id) is { Label.Length: > 0 } offer)
                    {
                        output.WriteLine($"{check.Id}: {offer.Label} {offer.Note}");
                        Mended(asked, text, check.Id, offer);
                        offers++;
                    }
                }
            },
            iter: Kits,
            threads: 1);

        // Of three kits drawn by chance one alone may have something to mend.
        offers.Should().BeGreaterThan(Kits / 4);
    }

    [Fact]
    public void Every_failing_check_leads_to_fields_that_the_form_has() => Any().Sample(
        text =>
        {
            var asked = new Asked();
            foreach (var check in asked.Plan(text).Checks.Where(check => !check.Passed))
            {
                check.Places.Should().NotBeEmpty(check.Id);
                check.Places.Should().OnlyContain(place => IsThere(asked, text, place), check.Id);
            }
        },
        iter: Kits,
        threads: 1);

    [Fact]
    public void A_passing_check_leads_nowhere_and_offers_nothing()
    {
        var asked = new Asked();

        asked.Plan(Fen).Checks.Where(check => check.Passed).Should().OnlyContain(check => check.Places.Count == 0);
        asked.Plan(Fen).Verdict.Check.Should().BeEmpty();
        Search(asked, Fen, "no such check").Label.Should().BeEmpty();
    }

    [Fact]
    public void A_key_that_the_kit_does_not_have_leads_to_where_it_can_be_said()
    {
        var asked = new Asked();
        var text = Spoilt("magnifications: [1:4, 1:2, 1:1]   # 1:1", "# 1:1").Replace("    spare-sets: 2\n", "", StringComparison.Ordinal).Replace("flashes-per-set: 150", "flashes-per-set: 1", StringComparison.Ordinal);

        var cells = asked.Plan(text).Checks.First(check => check.Id == "Cells/sedge");

        cells.Passed.Should().BeFalse();
        cells.Places.Should().ContainSingle(place => place.Path == "flashes[0].spare-sets").Which.Label.Should().StartWith("sedge, ").And.Contain("taken as 1");
    }

    // What is written into the text is read as what was planned in memory.
    [Fact]
    public void A_change_written_into_the_text_is_read_as_the_change()
    {
        var read = KitReader.Parse(Fen, "kit.yaml", PartsLibrary.Embedded);
        var white = read.Kit!.SetUps.First(setUp => setUp.Kind == SetUpKind.WhiteBackground).Name;
        KitChange[] changes =
        [
            new KitChange.Move(white, 0, Length.FromMillimeters(380)), new KitChange.Shift(white, 0, Length.FromMillimeters(-25), null), new KitChange.Shift(white, 0, null, Length.FromMillimeters(40)),
            new KitChange.Upright(white, 0), new KitChange.Turn(white, 1, new(Angle.FromDegrees(-120), Angle.FromDegrees(45))), new KitChange.Hold(white, 1, "short stand"), new KitChange.Hold(white, 1, null), new KitChange.Modify(white, 0, "dome"), new KitChange.Modify(white, 0, null), new KitChange.Iso(white, new(400)), new KitChange.Rest(white, "sand bag"),
            new KitChange.Background(white, Length.FromMillimeters(2000)), new KitChange.Before(white, "polariser"), new KitChange.Before(white, null), new KitChange.Shutter(white, ThirdStopSeries.FromMark(new ShutterSpeed(1.0 / 60))),
            new KitChange.Aperture(white, ThirdStopSeries.FromMark(new FNumber(11))), new KitChange.Shade(white, new(8), new(2)),
            new KitChange.Add(white, new LightSpec { Flash = "willow", Role = LightRole.Below, Distance = Length.FromMillimeters(400), OffsetRight = Length.FromMillimeters(250) }),
            new KitChange.Pitch(white, 0, Angle.FromDegrees(75)), new KitChange.Recut(Length.FromMillimeters(640), null), new KitChange.Sheet(null, Length.FromMillimeters(450)),
            new KitChange.FrameHeight(Length.FromMillimeters(560)), new KitChange.FrameShape(FrameKind.SweptTable), new KitChange.PieceLength(Length.FromMillimeters(420)),
            new KitChange.Magnify("reed 55", 1, new(0.25 / 2)), new KitChange.Magnify("reed 55", 1, null), new KitChange.Zoom("willow", Length.FromMillimeters(24)), new KitChange.SpareSets("sedge", 5),
            new KitChange.Frames(read.Kit.Subjects[0].Name, 2), new KitChange.Rounds(1),
            .. new StructuralChange[]
            {
                new StructuralChange.AllEdgesRest(), new StructuralChange.OtherSheet(Length.FromMillimeters(4)), new StructuralChange.OtherSweep(Length.FromMillimeters(1000)),
                new StructuralChange.EdgeRoom(Length.FromMillimeters(3)), new StructuralChange.OtherPipe(StockedPipe.Embedded[^1]), new StructuralChange.Stretched(), new StructuralChange.WithGuys(8),
                new StructuralChange.Pegged(8), new StructuralChange.Weighted(Mass.FromGrams(2500)), new StructuralChange.Shaded(), new StructuralChange.LighterElbow(Force.FromNewtons(10)),
            }.Select(change => new KitChange.Strengthen(change)),
        ];

        foreach (var change in changes)
        {
            var text = MendedText.Of(KitText.Of(Fen), [change], read.Kit);

            text.Should().NotBeNull($"{change} can be written");
            KitReader.Parse(text!.Text, "kit.yaml", PartsLibrary.Embedded).Kit!.Equals(change.Apply(read.Kit)).Should().BeTrue(change.ToString());
            StudioKit.Wording.MendText.Of([change], read.Kit).Should().NotBeEmpty().And.NotEndWith(".");
            text.Text.Split('\n').Count(line => line.TrimStart().StartsWith('#')).Should().BeGreaterThanOrEqualTo(Fen.Split('\n').Count(line => line.TrimStart().StartsWith('#')), "comments stay");
        }
    }

    [Fact]
    public void A_change_of_a_cover_or_an_upright_sheet_written_into_the_text_is_read_as_the_change()
    {
        var pond = Asked.Demo("pond-edge.yaml");
        var read = KitReader.Parse(pond, "kit.yaml", PartsLibrary.Embedded);

        foreach (var change in new KitChange[]
        {
            new KitChange.UnderCover("bee under the tub", "beetle tank"), new KitChange.Lift("bee tub"),
            new KitChange.BeforeSheet("bee under the tub", "back screen", Behind, Length.FromMillimeters(150)),
            new KitChange.BeforeSheet("bee under the tub", "another screen", Behind with { Trigger = "radio receiver", Group = "C" }, Length.FromMillimeters(150)),
            new KitChange.RecutUpright("plant screen", Length.FromMillimeters(260), Length.FromMillimeters(310)), new KitChange.LowerUpright("plant screen"),
            new KitChange.LiftFlash("sundew before the screen", 0, Length.FromMillimeters(25)),
        })
        {
            var text = MendedText.Of(KitText.Of(pond), [change], read.Kit!);

            text.Should().NotBeNull($"{change} can be written");
            KitReader.Parse(text!.Text, "kit.yaml", PartsLibrary.Embedded).Kit!.Equals(change.Apply(read.Kit!)).Should().BeTrue(change.ToString());
            StudioKit.Wording.MendText.Of([change], read.Kit!).Should().NotBeEmpty().And.NotEndWith(".");
        }
    }

    [Fact]
    public void A_change_of_what_holds_an_upright_sheet_written_into_the_text_is_read_as_the_change()
    {
        const string Kit = "kit: Reed bed\ncamera: {name: body, sensor: 36 mm x 24 mm}\nlenses:\n  - {name: reed 60, focal-length: 60 mm}\nuprights:\n  - {name: screen, lean: 10°, sheet: {mass: 800 g}}\n  - {name: other, carrier: feet, ballast: 1 kg}\n";
        var read = KitReader.Parse(Kit, "kit.yaml", PartsLibrary.Embedded);

        foreach (var change in new KitChange.Restand[]
        {
            new("screen") { CordPegs = 4, PegHold = Mass.FromKilograms(2.5) },
            new("screen") { Thickness = Length.FromMillimeters(4) },
            new("screen") { Width = Length.FromCentimeters(40), Height = Length.FromCentimeters(30) },
            new("screen") { Straight = true },
            new("other") { Ballast = Mass.FromKilograms(3.5) },
            new("other") { FootLength = Length.FromCentimeters(60) },
        })
        {
            var text = MendedText.Of(KitText.Of(Kit), [change], read.Kit!);

            text.Should().NotBeNull($"{change} can be written");
            KitReader.Parse(text!.Text, "kit.yaml", PartsLibrary.Embedded).Kit!.Equals(change.Apply(read.Kit!)).Should().BeTrue(change.ToString());
            StudioKit.Wording.MendText.Of([change], read.Kit!).Should().NotBeEmpty().And.NotEndWith(".");
        }
    }

    [Fact]
    public void The_button_of_a_view_that_a_cover_spoils_says_where_to_look_from()
    {
        var asked = new Asked();
        var text = Asked.Demo("pond-edge.yaml").Replace("camera-pitch: [60°, 75°]", "camera-pitch: 15°", StringComparison.Ordinal);

        var offer = Search(asked, text, "CoverView/bee under the tub");

        offer.Label.Should().Contain("Look down at ").And.Contain("instead of 15°");
        Mended(asked, text, "CoverView/bee under the tub", offer);
    }

    private static Gen<string> Any() => from chosen in Gen.Shuffle(Enumerable.Range(0, Spoils.Length).ToArray())
                                        from picks in Gen.Int[0, 5].Array[2]
                                        select chosen.Take(2).Zip(picks).Aggregate(Fen, (text, pick) => text.Replace(Spoils[pick.First].At, Spoils[pick.First].Instead[pick.Second % Spoils[pick.First].Instead.Length], StringComparison.Ordinal));

    private static string Spoilt(string at, string instead)
    {
        Fen.Contains(at, StringComparison.Ordinal).Should().BeTrue(at);
        return Fen.Replace(at, instead, StringComparison.Ordinal);
    }

    private static MendAnswer Search(Asked asked, string text, string check)
    {
        for (var step = 0; ; step++)
        {
            var answer = asked.For(EngineQuestions.Mend, new MendRequest(text, "kit.yaml", check, step));
            if (answer.IsDone)
            {
                step.Should().BeLessThan(20);
                return answer;
            }
        }
    }

    // Planned by a room that knows nothing of the search.
    private static void Mended(Asked asked, string text, string check, MendAnswer offer)
    {
        var (before, after) = (asked.Plan(text), new Asked().Plan(offer.Text));
        after.Verdict.Standing.Should().NotBe(Standing.Unread);
        after.Checks.Where(found => found.Id == check && !found.Passed).Should().BeEmpty(offer.Label);
        var broken = after.Checks.Where(found => !found.Passed && before.Checks.All(known => known.Id != found.Id || known.Passed)).Select(found => found.Name).ToList();
        (offer.Note.Length > 0).Should().Be(broken.Count > 0, $"'{offer.Note}' says that {string.Join(", ", broken)} fails");
        broken.Where(name => !offer.Note.Contains(name, StringComparison.Ordinal)).Should().BeEmpty();
    }

    private static bool IsThere(Asked asked, string text, FieldPlace place)
    {
        var form = asked.For(EngineQuestions.Form, new FormRequest(text, "kit.yaml", place.Room, place.Group, place.Adding));
        return form.Lines.Any(line => line.Path == place.Path) || form.Sections.Any(section => IsThere(section, place));
    }

    private static bool IsThere(FormSection section, FieldPlace place) => (section.IsList && section.Path == place.Path)
        || section.NewEntry.Any(line => line.Path == place.Path)
        || section.Groups.Any(group => group.Path == place.Path || group.Lines.Any(line => line.Path == place.Path) || group.Sections.Any(inner => IsThere(inner, place)));
}
