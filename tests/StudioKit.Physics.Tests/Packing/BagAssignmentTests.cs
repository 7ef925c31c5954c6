using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Packing;

public sealed class BagAssignmentTests
{
    private static readonly BoxSize Rucksack = new(Length.FromMillimeters(600), Length.FromMillimeters(300), Length.FromMillimeters(220));

    private static readonly Gen<PackCase> AnyPack =
        from masses in Gen.Int[50, 4000].Array[1, 7]
        from bags in Gen.Int[1, 3]
        from bodies in Gen.Int[50, 95].Array[3]
        from limits in Gen.Int[3, 12].Array[3]
        from shared in Gen.Bool
        select new PackCase
        {
            Items = [.. masses.Select((grams, i) => Item($"thing {i}", grams))],
            Bags = [.. Enumerable.Range(0, bags).Select(i => new CarryingBag(
                $"bag {i}", Rucksack, Mass.FromKilograms(1 + (0.3 * i)), Mass.FromKilograms(limits[i]), $"person {(shared ? 0 : i)}"))],
            Carriers = [.. bodies.Select((body, i) => new Carrier($"person {i}", Mass.FromKilograms(body)))],
        };

    [Fact]
    public void The_assignment_is_as_even_as_the_best_of_all_assignments() =>
        AnyPack.Sample(
            pack =>
            {
                var result = BagAssignment.Solve(pack);
                result.ProvenOptimal.Should().BeTrue();

                // A gram of a person's limit, the search's stated resolution.
                var gram = 1e-3 / 2.5;
                UseOf(pack, result).Should().BeApproximately(BestOfAll(pack), gram);
                result.HighestUse.Should().BeApproximately(UseOf(pack, result), 1e-9);
            },
            iter: 150);

    /// <summary>By hand: no sharing out can use the bags' limits less than all mass over all limits does.</summary>
    [Fact]
    public void Many_small_things_fill_bags_of_unlike_strength_by_the_same_share_of_it()
    {
        CarriedItem[] things = [.. Enumerable.Range(0, 60).Select(i => Item($"thing {i}", 50 + (37 * i % 301)))];
        var pack = Pack(things) with
        {
            Bags = [new("frame pack", Rucksack, Mass.FromKilograms(1.9), Mass.FromKilograms(16), "Ada"), new("camera bag", Rucksack, Mass.FromKilograms(1.2), Mass.FromKilograms(10), "Bo")],
            Carriers = [new("Ada", Mass.FromKilograms(95)), new("Bo", Mass.FromKilograms(95))],
        };

        var result = BagAssignment.Solve(pack);

        result.ProvenOptimal.Should().BeTrue();
        result.HighestUse.Should().BeApproximately((3.1 + things.Sum(thing => thing.TotalMass.Kilograms)) / 26, 1e-3 / 16, "to a gram, which is how fine the search looks");
    }

    [Fact]
    public void Nothing_is_lost_or_packed_twice() =>
        AnyPack.Sample(pack =>
            BagAssignment.Solve(pack).Bags.SelectMany(bag => bag.Items).Order(StringComparer.Ordinal).SequenceEqual(pack.Items.Select(item => item.Name).Order(StringComparer.Ordinal), StringComparer.Ordinal));

    /// <summary>By hand: 0.5 + 3·0.031 + 0.857 kg and the bag's 1.5 kg.</summary>
    [Fact]
    public void Totals_are_the_sum_of_the_parts()
    {
        var pack = Pack(Item("frame", 500), Item("cells", 31) with { Count = 3 }, Item("panel", 857));

        BagAssignment.Solve(pack).People.Should().ContainSingle().Which.Mass.Kilograms.Should().BeApproximately(2.95, 1e-9);
    }

    [Fact]
    public void A_thing_goes_in_the_bag_it_must_go_in()
    {
        var pack = Pack(Item("camera", 900) with { Bag = "shoulder bag" }, Item("frame", 900)) with
        {
            Bags = [new("rucksack", Rucksack, Mass.Zero), new("shoulder bag", Rucksack, Mass.Zero)],
        };

        BagAssignment.Solve(pack).Bags.Single(bag => bag.Bag == "shoulder bag").Items.Should().Equal("camera");
    }

    [Fact]
    public void A_long_pipe_is_strapped_outside_and_a_wide_sheet_goes_nowhere()
    {
        var pipe = new BoxSize(Length.FromMillimeters(900), Length.FromMillimeters(20), Length.FromMillimeters(20));
        var sheet = new BoxSize(Length.FromMillimeters(900), Length.FromMillimeters(600), Length.FromMillimeters(3));

        var result = BagAssignment.Solve(Pack(Item("long pipe", 200) with { Size = pipe }, Item("wide sheet", 900) with { Size = sheet }));

        result.Bags[0].StrappedOutside.Should().Equal("long pipe");
        result.Bags.SelectMany(bag => bag.Items).Should().Equal("long pipe");
    }

    [Fact]
    public void An_overfull_bag_and_an_overloaded_person_are_weighed()
    {
        var box = new BoxSize(Length.FromMillimeters(500), Length.FromMillimeters(300), Length.FromMillimeters(200));

        var result = BagAssignment.Solve(Pack(Item("water", 16000) with { Size = box }));

        result.People[0].Band.Should().Be(LoadBand.Demanding);
        result.Bags[0].VolumeShare.Should().BeApproximately(30 / (39.6 * 0.7), 1e-9);
    }

    [Fact]
    public void What_is_needed_first_lies_on_top_and_heavy_things_low() =>
        BagLayers.FromBottom([Item("rain coat", 300), Item("frame", 900) with { NeededAt = 1 }, Item("panel", 950) with { NeededAt = 1, Fragile = true }, Item("disinfectant", 100) with { NeededAt = 3 }])
            .Select(item => item.Name).Should().Equal("disinfectant", "frame", "panel", "rain coat");

    [Fact]
    public void Forty_things_in_three_bags_are_shared_out_evenly_to_a_gram()
    {
        var pack = new PackCase
        {
            Items = [.. Enumerable.Range(0, 40).Select(i => Item($"thing {i}", 50 + (i * 97 % 700)))],
            Bags = [.. Enumerable.Range(0, 3).Select(i => new CarryingBag($"bag {i}", Rucksack, Mass.FromKilograms(1), null, $"person {i}"))],
            Carriers = [.. Enumerable.Range(0, 3).Select(i => new Carrier($"person {i}", Mass.FromKilograms(60 + (10 * i))))],
        };

        var result = BagAssignment.Solve(pack);

        result.ProvenOptimal.Should().BeTrue();
        result.HighestUse.Should().BeApproximately(Total(pack) / (0.2 * 210), 1e-4);
    }

    [Fact]
    public void A_pack_without_bags_is_refused()
    {
        var act = () => BagAssignment.Solve(Pack(Item("frame", 500)) with { Bags = [] });

        act.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static double Total(PackCase pack) => pack.Items.Sum(item => item.TotalMass.Kilograms) + pack.Bags.Sum(bag => bag.Mass.Kilograms);

    private static CarriedItem Item(string name, double grams) => new() { Name = name, Mass = Mass.FromGrams(grams) };

    private static PackCase Pack(params CarriedItem[] items) => new()
    {
        Items = items,
        Bags = [new("rucksack", Rucksack, Mass.FromKilograms(1.5), null, "ranger")],
        Carriers = [new("ranger", Mass.FromKilograms(70))],
    };

    private static double BestOfAll(PackCase pack)
    {
        var best = double.PositiveInfinity;
        var count = (int)Math.Pow(pack.Bags.Count, pack.Items.Count);
        for (var code = 0; code < count; code++)
        {
            var grams = pack.Bags.Select(bag => bag.Mass.Grams).ToArray();
            for (var (item, rest) = (0, code); item < pack.Items.Count; item++, rest /= pack.Bags.Count)
            {
                grams[rest % pack.Bags.Count] += pack.Items[item].TotalMass.Grams;
            }

            best = Math.Min(best, Use(pack, grams));
        }

        return best;
    }

    private static double UseOf(PackCase pack, BagAssignmentResult result) => Use(pack, [.. result.Bags.Select(bag => bag.Mass.Grams)]);

    private static double Use(PackCase pack, double[] grams)
    {
        var bags = pack.Bags.Select((bag, i) => grams[i] / bag.HighestLoad!.Value.Grams);
        var people = pack.Carriers.Select(person =>
            pack.Bags.Select((bag, i) => bag.Carrier == person.Name ? grams[i] : 0).Sum() / (pack.HighestShare * person.BodyMass.Grams));
        return bags.Concat(people).Max();
    }
}
