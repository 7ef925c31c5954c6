using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Packing;

public sealed class LeaveAtHomeTests
{
    [Fact]
    public void The_choice_loses_as_little_as_the_best_of_all_choices() =>
        (from masses in Gen.Int[20, 2000].Array[1, 9]
         from losses in Gen.Int[0, 5].Array[9]
         from essential in Gen.Bool.Array[9]
         from needs in Gen.Int[0, 511].Array[0, 5]
         from share in Gen.Double[0, 1.1]
         select (masses, losses, essential, needs, share)).Sample(
            sample =>
            {
                var items = sample.masses.Select((grams, i) => new CarriedItem
                {
                    Name = $"thing {i}",
                    Mass = Mass.FromGrams(grams),
                    Loss = sample.losses[i],
                    Essential = sample.essential[i],
                }).ToList();
                var capabilities = sample.needs.Select((bits, i) => new Capability(
                    $"framing {i}", 1 + i, [.. items.Where((_, k) => (bits >> k) % 2 == 1).Select(item => item.Name)])).ToList();
                var target = sample.share * sample.masses.Sum();

                var choice = LeaveAtHome.Choose(items, capabilities, Mass.FromGrams(target));

                var (reached, loss) = BestOfAll(items, capabilities, target);
                choice.Reached.Should().Be(reached);
                choice.ProvenOptimal.Should().BeTrue();
                choice.Loss.Should().BeApproximately(reached ? loss : choice.Loss, 1e-6);
                choice.Left.Should().NotContain(name => items.Single(item => item.Name == name).Essential);
            },
            iter: 300);

    /// <summary>By hand: the tube alone sheds enough and costs one framing; the flash would cost two.</summary>
    [Fact]
    public void The_tube_stays_at_home_rather_than_the_flash()
    {
        CarriedItem[] items =
        [
            new() { Name = "frame", Mass = Mass.FromGrams(700) },
            new() { Name = "second flash", Mass = Mass.FromGrams(400), Essential = false },
            new() { Name = "extension tube", Mass = Mass.FromGrams(350), Essential = false },
        ];
        Capability[] framings =
        [
            new("sundew 1:1", 1, ["extension tube"]), new("toad 1:4", 1, ["second flash"]), new("moth 1:2", 1, ["second flash"]),
        ];

        var choice = LeaveAtHome.Choose(items, framings, Mass.FromGrams(1150));

        choice.Left.Should().Equal("extension tube");
        choice.LostCapabilities.Should().Equal("sundew 1:1");
        choice.Mass.Should().Be(Mass.FromGrams(1100));
    }

    [Fact]
    public void A_light_pack_leaves_nothing() =>
        LeaveAtHome.Choose([new() { Name = "net", Mass = Mass.FromGrams(300), Essential = false }], [], Mass.FromKilograms(1))
            .Should().BeEquivalentTo(new { Left = Array.Empty<string>(), Loss = 0.0, Reached = true, ProvenOptimal = true });

    [Fact]
    public void A_negative_target_is_refused()
    {
        var act = () => LeaveAtHome.Choose([], [], Mass.FromGrams(-1));

        act.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("target");
    }

    private static (bool Reached, double Loss) BestOfAll(List<CarriedItem> items, List<Capability> capabilities, double target)
    {
        var best = double.PositiveInfinity;
        for (var code = 0; code < 1 << items.Count; code++)
        {
            var left = items.Where((_, i) => (code >> i) % 2 == 1).ToList();
            var mass = items.Except(left).Sum(item => item.TotalMass.Grams);
            if (left.TrueForAll(item => !item.Essential) && mass <= target + 1e-3)
            {
                var names = left.Select(item => item.Name).ToList();
                best = Math.Min(best, left.Sum(item => item.Loss) + capabilities.Where(capability => capability.Needs.Any(names.Contains)).Sum(capability => capability.Loss));
            }
        }

        return (double.IsFinite(best), best);
    }
}
