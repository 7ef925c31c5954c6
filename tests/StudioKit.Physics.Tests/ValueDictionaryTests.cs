namespace StudioKit.Physics.Tests;

public sealed class ValueDictionaryTests
{
    private static readonly string[] Names = ["reed", "sedge", "willow"];

    private static readonly Gen<Dictionary<string, int>> SomeValues =
        Gen.Dictionary(Gen.Int[0, 2].Select(at => Names[at]), Gen.Int[0, 1])[0, 3];

    /// <summary>Against sorted pairs: the same pairs in whatever order.</summary>
    [Fact]
    public void Two_dictionaries_are_equal_where_every_name_has_an_equal_value() =>
        Gen.Select(SomeValues, SomeValues).Sample((one, two) =>
        {
            var (left, right) = (new ValueDictionary<int>(one), new ValueDictionary<int>(two));
            return (left == right) == Sorted(one).SequenceEqual(Sorted(two)) && (left != right) != (left == right);
        });

    [Fact]
    public void The_order_of_entry_changes_neither_equality_nor_hash() =>
        SomeValues.Sample(values =>
        {
            var (left, right) = (new ValueDictionary<int>(values), new ValueDictionary<int>(values.Reverse()));
            return left == right && left.GetHashCode() == right.GetHashCode() && left.Equals((object)right);
        });

    [Fact]
    public void A_dictionary_keeps_what_it_was_made_of_when_the_source_changes()
    {
        var source = new Dictionary<string, int> { ["reed"] = 1 };
        var values = new ValueDictionary<int>(source);
        source["reed"] = 2;

        values["reed"].Should().Be(1);
        values.ContainsKey("Reed").Should().BeFalse();
        values.TryGetValue("sedge", out _).Should().BeFalse();
    }

    private static IEnumerable<KeyValuePair<string, int>> Sorted(Dictionary<string, int> values) => values.OrderBy(pair => pair.Key, StringComparer.Ordinal);
}
