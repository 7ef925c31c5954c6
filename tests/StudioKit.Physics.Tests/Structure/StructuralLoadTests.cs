using StudioKit.Physics.Structure;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

/// <summary>A check names every load that it depends on.</summary>
public sealed class StructuralLoadTests
{
    private static readonly (StructuralLoadKind Kind, Func<StudioCheckCase, StudioCheckCase> Heavier)[] Changes =
    [
        (StructuralLoadKind.Elbow, studio => studio with { Elbow = studio.Elbow * 2 }),
        (StructuralLoadKind.Subject, studio => studio with { Subject = studio.Subject * 3 }),
        (StructuralLoadKind.Gust, studio => studio with { Gust = studio.Gust * 1.2 }),
        (StructuralLoadKind.Air, studio => studio with { Air = Temperature.FromDegreesCelsius(studio.Air.DegreesCelsius + 8) }),
        (StructuralLoadKind.SunWarming, studio => studio with { SunWarming = studio.SunWarming + TemperatureDelta.FromKelvins(8) }),
        (StructuralLoadKind.Built, studio => studio with { Built = Temperature.FromDegreesCelsius(5) }),
        (StructuralLoadKind.Standing, studio => studio with { StandingMass = studio.StandingMass * 1.5 }),
        (StructuralLoadKind.Ballast, studio => studio with { Ballast = studio.Ballast * 1.5 }),
        (StructuralLoadKind.PegHold, studio => studio with { PegHold = studio.PegHold * 1.5 }),
        (StructuralLoadKind.Sheet, studio => studio with { Sheet = studio.Sheet with { Density = studio.Sheet.Density * 1.5 } }),
    ];

    public static TheoryData<bool, bool> Studios => new() { { false, false }, { true, false }, { false, true }, { true, true } };

    [Theory]
    [MemberData(nameof(Studios))]
    public void Every_load_that_changes_a_check_is_named_by_it(bool guyed, bool plastic)
    {
        var studio = StudioCases.Fen with
        {
            Ballast = Mass.FromKilograms(2),
            Pegs = 4,
            PegHold = Force.FromNewtons(30),
            Guyed = guyed,
            Pipe = StudioCases.Fen.Pipe with { SoftensLikePvc = plastic },
        };
        var before = StudioChecks.All(studio);
        foreach (var (kind, heavier) in Changes)
        {
            var changed = StudioChecks.All(heavier(studio)).Zip(before).Where(pair => Math.Abs(pair.First.Ratio - pair.Second.Ratio) > 1e-12).Select(pair => pair.Second).ToList();

            changed.Should().NotBeEmpty($"{kind} is a load");
            changed.Should().OnlyContain(check => check.Loads.Any(load => load.Kind == kind), $"{kind} counts in them");
        }
    }

    /// <summary>World Meteorological Organization, Manual on Codes: force 0 under 0.3 m/s, 3 is 3.4 to 5.4 m/s, 8 is 17.2 to 20.7 m/s, 12 from 32.7 m/s.</summary>
    [Theory]
    [InlineData(0.2, 0)]
    [InlineData(3.4, 3)]
    [InlineData(5.4, 3)]
    [InlineData(5.5, 4)]
    [InlineData(17.2, 8)]
    [InlineData(20.7, 8)]
    [InlineData(32.7, 12)]
    public void Mean_speeds_have_their_force(double metresPerSecond, int force) => Beaufort.ForceOf(metresPerSecond).Should().Be(force);

    [Theory]
    [InlineData(0, 0.3)]
    [InlineData(3, 5.4)]
    [InlineData(7, 17.1)]
    [InlineData(11, 32.6)]
    public void A_force_reaches_up_to_its_highest_mean(int force, double metresPerSecond) => Beaufort.HighestMean(force).Should().Be(metresPerSecond);

    [Theory]
    [InlineData(-1)]
    [InlineData(12)]
    public void A_force_without_an_upper_bound_is_refused(int force)
    {
        var act = () => Beaufort.HighestMean(force);

        act.Should().Throw<ArgumentOutOfRangeException>().WithParameterName(nameof(force));
    }
}
