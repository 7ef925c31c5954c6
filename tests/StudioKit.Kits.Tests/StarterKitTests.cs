using StudioKit.Kits.SetUps;

namespace StudioKit.Kits.Tests;

public sealed class StarterKitTests
{
    [Fact]
    public void As_it_comes_it_is_without_fault() => IsSound(StarterKit.Text);

    [Fact]
    public void Each_block_that_is_commented_out_is_without_fault_when_it_is_put_to_use()
    {
        StarterBlocks.OneInUse.Should().HaveCountGreaterThan(12);
        StarterBlocks.OneInUse.Should().AllSatisfy(IsSound);
    }

    [Fact]
    public void With_every_block_in_use_it_has_all_four_ways_of_lighting()
    {
        IsSound(StarterBlocks.AllInUse);
        KitReader.Parse(StarterBlocks.AllInUse, "my-kit.yaml", PartsLibrary.Embedded).Kit!.SetUps.Select(setUp => setUp.Kind)
            .Should().BeEquivalentTo(Enum.GetValues<SetUpKind>());
    }

    [Fact]
    public void Most_of_it_is_commented_out()
    {
        var lines = StarterKit.Text.Split('\n').Where(line => line.Trim().Length > 0).ToList();

        lines.Count(line => line.StartsWith('#')).Should().BeGreaterThan(lines.Count / 2);
    }

    private static void IsSound(string text)
    {
        KitReader.Parse(text, "my-kit.yaml", PartsLibrary.Embedded).Diagnostics.Select(fault => fault.Format()).Should().BeEmpty();
        KitSchemaTests.Faults(text).Should().BeEmpty();
    }
}
