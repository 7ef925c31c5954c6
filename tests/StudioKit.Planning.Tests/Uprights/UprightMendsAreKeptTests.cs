using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Mending;

namespace StudioKit.Planning.Tests.Uprights;

/// <summary>What is offered for an upright sheet that does not stand is written into the kit, and the whole kit planned again.</summary>
public sealed class UprightMendsAreKeptTests
{
    public static TheoryData<string, string, string> Failing => new()
    {
        { nameof(PlanCheckKind.UprightTipping), "width: 600 mm, height: 500 mm, over-ground: 20 cm", "cords" },
        { nameof(PlanCheckKind.UprightTipping), "width: 600 mm, height: 500 mm, over-ground: 20 cm, cord-pegs: 4, peg-hold: 1 kg", "more cords" },
        { nameof(PlanCheckKind.UprightTipping), "width: 500 mm, height: 500 mm, lean: 30°, stake-hold: 2.2 kg", "straight" },
        { nameof(PlanCheckKind.UprightTipping), "carrier: feet, width: 500 mm, height: 500 mm", "ballast" },
        { nameof(PlanCheckKind.UprightSliding), "carrier: feet, width: 500 mm, height: 400 mm, foot-length: 1 m", "ballast" },
        { nameof(PlanCheckKind.UprightSheet), "width: 1.6 m, height: 500 mm, stake-hold: 150 kg, sheet: {thickness: 2 mm}", "thicker" },
        { nameof(PlanCheckKind.UprightReach), "width: 1.1 m, height: 500 mm, stake-hold: 150 kg, sheet: {thickness: 2 mm}", "thicker" },
        { nameof(PlanCheckKind.UprightPoles), "width: 1 m, height: 1.2 m, over-ground: 30 cm, stake-hold: 150 kg, sheet: {thickness: 6 mm}", "pipe" },
    };

    [Theory]
    [MemberData(nameof(Failing))]
    public void What_is_offered_makes_the_check_pass(string kind, string upright, string what)
    {
        var read = KitText.Read(StandKit.Text($"  - {{name: screen, {upright}}}", StandKit.Growing("screen"), "site: {wind: 5 m/s}"));
        var plan = KitPlanner.Plan(read);
        var check = plan.Checks.Single(found => found.Kind.ToString() == kind);
        check.Passed.Should().BeFalse("there is something to mend");
        check.Remedy.Should().NotBeNull();

        var mend = new CheckMender(plan, changes => KitPlanner.Plan(read with { Kit = changes.Aggregate(read.Kit!, (kit, change) => change.Apply(kit)) })).Of(check);

        mend.Should().NotBeNull("{0} is offered", what);
        var after = KitPlanner.Plan(read with { Kit = mend!.Changes.Aggregate(read.Kit!, (kit, change) => change.Apply(kit)) });
        after.Checks.Where(found => found.Kind.ToString() == kind).Should().OnlyContain(found => found.Passed);
        mend.Changes.Should().OnlyContain(change => change is KitChange.Restand || change is KitChange.Strengthen);
    }

    /// <summary>The least ballast of the offered steps: half a kilogram less does not do.</summary>
    [Fact]
    public void No_more_ballast_is_offered_than_it_takes()
    {
        var plan = KitText.Plan(StandKit.Text("  - {name: screen, carrier: feet, width: 500 mm, height: 500 mm}", StandKit.Growing("screen"), "site: {wind: 4 m/s}"));
        var restand = plan.Checks.Single(check => check.Kind == PlanCheckKind.UprightTipping).Remedy!.Restand!;
        var ballast = restand.Ballast!.Value;

        Tips(restand).Should().BeFalse();
        Tips(restand with { Ballast = ballast - UnitsNet.Mass.FromKilograms(0.5) }).Should().BeTrue();

        bool Tips(KitChange change) => KitPlanner.Plan(KitReaderResult(change)).Checks.Any(check => check is { Kind: PlanCheckKind.UprightTipping, Passed: false });

        KitReadResult KitReaderResult(KitChange change) => new(change.Apply(plan.Kit), [], [], new ValueDictionary<Uncertainty>());
    }

    /// <summary>A storm that no cord, foot or pipe holds a square metre of sheet in.</summary>
    [Fact]
    public void Where_nothing_holds_it_the_sheet_is_kept_out_of_the_wind()
    {
        var plan = KitText.Plan(StandKit.Text("  - {name: screen, width: 1.5 m, height: 1.5 m, over-ground: 50 cm, stake-hold: 1 kg}", StandKit.Growing("screen"), "site: {wind: 25 m/s}"));

        var remedy = plan.Checks.Single(check => check.Kind == PlanCheckKind.UprightTipping).Remedy!;

        remedy.Kind.Should().Be(CheckRemedyKind.OutOfWind);
    }
}
