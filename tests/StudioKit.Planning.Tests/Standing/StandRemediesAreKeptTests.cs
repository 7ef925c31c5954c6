using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Studio;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Mending;
using StudioKit.Planning.Tests.Plans;
using UnitsNet;
using Xunit.Abstractions;

namespace StudioKit.Planning.Tests.Standing;

/// <summary>Whoever lets a light come from where a failing check says, or holds it with what it says, and plans again, has a light with which nothing is wrong.</summary>
public sealed class StandRemediesAreKeptTests(ITestOutputHelper output)
{
    private static readonly int Kits = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 60;

    // Kits as photographers own them, their lights anywhere over the level of the subject, held by anything or nothing.
    private static Gen<KitSpec> Lit { get; } =
        from kit in LikelyKits.Any
        from directions in Gen.Select(Gen.Double[-180, 180], Gen.Double[0, 90]).Array[2]
        from holders in Holder().Array[2]
        from held in Gen.Bool.Array[2]
        from front in Gen.Double[40, 90]
        from finish in Gen.Enum<SheetFinish>()
        select kit with
        {
            Panel = kit.Panel with { UndersideReflectance = 0, Finish = finish },
            Site = kit.Site with { GroundReflectance = 0 },
            Lenses = [.. kit.Lenses.Select(lens => lens with { FrontDiameter = Length.FromMillimeters(front) })],
            Holders = [.. holders.Select((holder, i) => holder with { Name = $"holder {i}" })],
            SetUps = [.. kit.SetUps.Select(setUp => setUp with { Lights = [.. setUp.Lights.Select((light, i) => light.Role == LightRole.Below ? light : Placed(light, directions[i], held[i] ? $"holder {i}" : null))] })],
        };

    [Fact]
    public void What_a_failing_check_says_of_a_light_leaves_nothing_wrong_with_it()
    {
        var followed = new Dictionary<PlanCheckKind, int>();
        Lit.Sample(
            kit =>
            {
                foreach (var kind in Follow(kit))
                {
                    followed[kind] = followed.GetValueOrDefault(kind) + 1;
                }
            },
            iter: Kits,
            threads: 1);

        output.WriteLine(string.Join(", ", followed.Select(pair => $"{pair.Key} {pair.Value}")));
        followed.Values.Sum().Should().BeGreaterThan(Kits / 12, "the draw is another one every time, and a test of nothing must not pass");
    }

    /// <summary>The demo kit with its lights put wrong in one way each; the mend that is offered makes the check pass.</summary>
    [Theory]
    [InlineData(PlanCheckKind.LensShadow, "azimuth: -100°, elevation: 35°", "azimuth: 0°, elevation: 70°")]
    [InlineData(PlanCheckKind.LightsOutOfPicture, "azimuth: 150°, elevation: 40°", "azimuth: 180°, elevation: 0°")]
    [InlineData(PlanCheckKind.LightRoom, "azimuth: -100°, elevation: 35°", "azimuth: 0°, elevation: 30°")]
    [InlineData(PlanCheckKind.HolderReach, "highest: 1.1 m", "highest: 50 cm")]
    [InlineData(PlanCheckKind.LightOnSheet, "azimuth: -100°, elevation: 35°", "azimuth: 180°, elevation: 60°")]
    public void A_light_of_the_demo_kit_that_stands_wrong_is_offered_another_place(PlanCheckKind kind, string right, string wrong)
    {
        var text = KitText.DemoText("fen-edge.yaml").Replace(right, wrong, StringComparison.Ordinal).Replace("modifier: small softbox, distance: 40 cm", "distance: 40 cm", StringComparison.Ordinal);
        var read = KitText.Read(text);
        read = read with { Kit = read.Kit! with { Panel = read.Kit.Panel with { UndersideReflectance = 0.05 }, Site = read.Kit.Site with { GroundReflectance = 0 } } };
        var plan = KitPlanner.Plan(read);
        var check = plan.Checks.Single(check => check.Kind == kind);
        check.Passed.Should().BeFalse("the light was put wrong on purpose");

        var mend = new CheckMender(plan, changes => KitPlanner.Plan(read with { Kit = changes.Aggregate(read.Kit!, (kit, change) => change.Apply(kit)) })).Of(check);

        mend.Should().NotBeNull();
        mend!.After.Checks.Single(after => after.Kind == kind).Passed.Should().BeTrue();
    }

    private static List<PlanCheckKind> Follow(KitSpec kit)
    {
        var read = new KitReadResult(kit, [], [], new());
        var followed = new List<PlanCheckKind>();
        foreach (var check in KitPlanner.Plan(read).Checks.Where(check => check is { Passed: false, Remedy: not null } && check.Findings.Any(finding => finding is CheckFinding.OfStand)))
        {
            var stand = check.Findings.OfType<CheckFinding.OfStand>().First().Stand;
            KitChange? change = check.Remedy switch
            {
                { Kind: CheckRemedyKind.LightFromElsewhere, Amount: CheckAmount.Directed to } => new KitChange.Turn(stand.SetUp, stand.Place, to.From),
                { Kind: CheckRemedyKind.OtherHolder } other => new KitChange.Hold(stand.SetUp, stand.Place, other.Parts.Count > 2 ? other.Parts[2] : null),
                _ => null,
            };
            var after = KitPlanner.Plan(read with { Kit = change!.Apply(kit) });
            after.LightStands.Where(one => one.Place == stand.Place).SelectMany(one => one.Faults).Should().BeEmpty($"{check.Kind} is mended by {change}");
            followed.Add(check.Kind);
        }

        return followed;
    }

    private static LightSpec Placed(LightSpec light, (double Azimuth, double Elevation) from, string? holder) =>
        light with { Azimuth = Angle.FromDegrees(from.Azimuth), Elevation = Angle.FromDegrees(from.Elevation), Holder = holder };

    private static Gen<HolderSpec> Holder() =>
        from kind in Gen.Enum<HolderKind>()
        from reach in Gen.Double[0.05, 1]
        from highest in Gen.Double[0.3, 1.5]
        select new HolderSpec
        {
            Name = "",
            Kind = kind,
            Lowest = kind is HolderKind.Stand or HolderKind.Ground ? Length.FromMeters(0.1) : null,
            Highest = kind is HolderKind.Stand or HolderKind.Ground ? Length.FromMeters(highest) : null,
            Reach = kind == HolderKind.Ground ? null : Length.FromMeters(reach),
        };
}
