using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

public sealed class ReachingMagnificationTests
{
    private static readonly OpticalStackCase Bare = new()
    {
        Lens = new LensOptics { FocalLength = Length.FromMillimeters(55), LargestMagnification = 0.5 },
        SensorWidth = Length.FromMillimeters(36),
        SensorHeight = Length.FromMillimeters(24),
    };

    private static readonly AccessoriesOnHand OnHand = new()
    {
        ExtensionTubes = [Length.FromMillimeters(12), Length.FromMillimeters(20), Length.FromMillimeters(36)],
        CloseUpLenses = [ReciprocalLength.FromInverseMeters(3)],
        Teleconverters = [new TeleconverterOptics(1.4, Length.FromMillimeters(20))],
    };

    [Fact]
    public void Every_subset_of_what_is_on_hand_is_tried() =>
        ReachingMagnification.With(Bare, OnHand, new Magnification(1)).All.Should().HaveCount(8 * 2 * 2);

    /// <summary>By hand, m = m₀ + e/55: 1:1 from 27.5 mm (lens at 1:2) to 55 mm (lens at infinity): 36 mm alone, 12 + 20, 12 + 36; not 20 + 36.</summary>
    [Fact]
    public void Life_size_from_a_55_mm_lens_takes_the_tubes_worked_by_hand()
    {
        var reach = ReachingMagnification.With(
            Bare, OnHand with { CloseUpLenses = [], Teleconverters = [] }, new Magnification(1));

        reach.LeastExtension.Millimeters.Should().BeApproximately(27.5, 1e-9);
        reach.MostExtension.Millimeters.Should().BeApproximately(55, 1e-9);
        reach.Covering.Select(combination => string.Join('+', combination.Tubes)).Should().Equal("2", "0+1", "0+2");
        reach.Limit.Should().BeNull();
    }

    [Fact]
    public void The_bare_lens_is_the_simplest_way_to_what_it_reaches_itself()
    {
        var simplest = ReachingMagnification.With(Bare, OnHand, new Magnification(0.4)).Covering[0];

        simplest.Pieces.Should().Be(0);
    }

    [Fact]
    public void Among_equally_many_pieces_a_tube_comes_before_glass()
    {
        var covering = ReachingMagnification.With(Bare, OnHand, new Magnification(0.65)).Covering;

        covering[0].Pieces.Should().Be(1);
        covering[0].GlassPieces.Should().Be(0);
        covering.Should().Contain(combination => combination.Pieces == 1 && combination.GlassPieces == 1);
    }

    [Fact]
    public void Every_combination_listed_does_reach_the_magnification() =>
        Gen.Double[0.05, 3].Sample(wanted =>
        {
            var reach = ReachingMagnification.With(Bare, OnHand, new Magnification(wanted));
            return (reach.Covering.Count > 0) == reach.Limit is null
                && reach.Covering.All(combination =>
                    OpticalStack.AtMagnification(combination.Stack, new Magnification(wanted)).Stack is { } stack
                    && Math.Abs((stack.Magnification.Value / wanted) - 1) < 1e-9);
        });

    [Fact]
    public void The_extension_found_reaches_the_magnification_for_any_stack() =>
        Gen.Select(Gen.Double[30, 200], Gen.Double[1.01, 4], Gen.Double[1, 2], Gen.Double[0, 4]).Sample((f, wanted, factor, power) =>
        {
            var bare = Bare with
            {
                Lens = Bare.Lens with { FocalLength = Length.FromMillimeters(f) },
                TeleconverterFactor = factor,
                CloseUpPower = ReciprocalLength.FromInverseMeters(power),
            };
            var (least, most) = ReachingMagnification.ExtensionFor(bare, wanted);
            return (most <= Length.Zero || Math.Abs(OpticalStack.Range(bare with { Extension = most }).Smallest - wanted) < 1e-9 * wanted)
                && (least <= Length.Zero || Math.Abs(OpticalStack.Range(bare with { Extension = least }).Largest - wanted) < 1e-9 * wanted);
        });

    [Fact]
    public void Too_large_a_magnification_says_how_much_is_missing()
    {
        var reach = ReachingMagnification.With(Bare, OnHand with { CloseUpLenses = [], Teleconverters = [] }, new Magnification(3));

        // By hand: 68 mm of tube and 1:2 give 1.736; 3:1 takes 2.5 × 55 mm.
        reach.Covering.Should().BeEmpty();
        reach.Limit!.Kind.Should().Be(ReachLimitKind.TooLarge);
        reach.Limit.Nearest!.Value.Value.Should().BeApproximately(1.736, 5e-4);
        reach.Limit.LeastExtension.Millimeters.Should().BeApproximately(137.5, 1e-6);
    }

    [Fact]
    public void A_gap_between_two_tubes_is_called_a_gap()
    {
        var fixedLens = Bare with { Lens = Bare.Lens with { LargestMagnification = 0 } };

        var reach = ReachingMagnification.With(
            fixedLens, new AccessoriesOnHand { ExtensionTubes = [Length.FromMillimeters(12), Length.FromMillimeters(36)] }, new Magnification(0.5));

        // 12 mm on 55 mm gives 0.218 and 36 mm 0.655, nearer to 0.5 by ratio; 27.5 mm gives 0.5.
        reach.Limit!.Kind.Should().Be(ReachLimitKind.Between);
        reach.Limit.Nearest!.Value.Value.Should().BeApproximately(36.0 / 55, 1e-9);
        reach.Limit.LeastExtension.Millimeters.Should().BeApproximately(27.5, 1e-6);
    }

    [Fact]
    public void More_accessories_than_can_be_tried_are_refused() =>
        FluentActions.Invoking(() => ReachingMagnification.With(
                Bare,
                new AccessoriesOnHand { ExtensionTubes = [.. Enumerable.Repeat(Length.FromMillimeters(10), 9)] },
                new Magnification(1)))
            .Should().Throw<ArgumentOutOfRangeException>();

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    public void A_tube_that_is_none_is_refused(double length) =>
        FluentActions.Invoking(() => ReachingMagnification.With(
                Bare, new AccessoriesOnHand { ExtensionTubes = [Length.FromMillimeters(length)] }, new Magnification(1)))
            .Should().Throw<ArgumentOutOfRangeException>();
}
