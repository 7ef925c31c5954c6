namespace StudioKit.Physics.Tests;

public sealed class ValueListTests
{
    private static readonly Gen<int[]> SomeNumbers = Gen.Int[0, 2].Array[0, 4];

    /// <summary>Against the library's own comparison of sequences; short lists of few numbers, so that many pairs are equal.</summary>
    [Fact]
    public void Two_lists_are_equal_where_their_elements_are_in_the_same_order() =>
        Gen.Select(SomeNumbers, SomeNumbers).Sample((one, two) =>
        {
            ValueList<int> left = [.. one];
            ValueList<int> right = [.. two];
            return (left == right) == one.SequenceEqual(two) && (left != right) != one.SequenceEqual(two) && left.Equals((object)right) == (left == right);
        });

    [Fact]
    public void Equal_lists_hash_alike() =>
        SomeNumbers.Sample(numbers =>
        {
            ValueList<int> one = [.. numbers];
            ValueList<int> other = [.. numbers];
            return one.GetHashCode() == other.GetHashCode();
        });

    /// <summary>Without the order and the number in it, a hash would keep lists together that a store must keep apart.</summary>
    [Fact]
    public void Lists_of_the_same_elements_in_another_order_hash_apart()
    {
        ValueList<int> up = [1, 2, 3];
        ValueList<int> down = [3, 2, 1];

        down.GetHashCode().Should().NotBe(up.GetHashCode());
    }

    [Fact]
    public void A_list_keeps_what_it_was_made_of_when_the_source_changes()
    {
        var source = new List<int> { 1, 2 };
        ValueList<int> list = [.. source];
        source[0] = 9;

        list.Should().Equal(1, 2);
    }

    [Fact]
    public void A_list_in_a_record_makes_the_record_compare_by_value()
    {
        var one = new Shelf([new Box("a"), new Box("b")]);
        var same = new Shelf([new Box("a"), new Box("b")]);

        (one == same).Should().BeTrue();
        (one == (same with { Boxes = [.. same.Boxes, new Box("c")] })).Should().BeFalse();
        (one == (same with { Boxes = [new Box("a"), new Box("x")] })).Should().BeFalse();
    }

    [Fact]
    public void A_missing_list_equals_a_missing_list_only()
    {
        ValueList<int>? none = null;
        ValueList<int> empty = [];

        (none == null).Should().BeTrue();
        (none == empty).Should().BeFalse();
        (empty == none).Should().BeFalse();
        empty.Equals(none).Should().BeFalse();
    }

    [Fact]
    public void A_list_can_be_made_of_other_things_one_by_one() => ValueList.From([3, 1, 2], number => number * 10).Should().Equal(30, 10, 20);

    [Fact]
    public void A_list_shows_its_elements()
    {
        ValueList<string> list = ["reed", "sedge"];

        list.ToString().Should().Be("[reed, sedge]");
    }

    private sealed record Box(string Name);

    private sealed record Shelf(ValueList<Box> Boxes);
}
