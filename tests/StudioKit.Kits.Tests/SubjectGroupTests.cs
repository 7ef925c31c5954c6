using StudioKit.Kits.Subjects;

namespace StudioKit.Kits.Tests;

/// <summary>Groups of subjects by their own names, and by what people call their animals.</summary>
public sealed class SubjectGroupTests
{
    [Theory]
    [InlineData("scorpions", SubjectGroup.Scorpions)]
    [InlineData("centipedes-and-millipedes", SubjectGroup.CentipedesAndMillipedes)]
    [InlineData("small-mammals", SubjectGroup.SmallMammals)]
    [InlineData("lifeless-things", SubjectGroup.LifelessThings)]
    [InlineData("plants-and-fungi", SubjectGroup.PlantsAndFungi)]
    public void Groups_are_read_by_name(string written, SubjectGroup group) => Read(written).Kit!.Subjects[0].Group.Should().Be(group);

    [Theory]
    [InlineData("caterpillar", "crawling-insects-and-spiders")]
    [InlineData("Caterpillars", "crawling-insects-and-spiders")]
    [InlineData("hawk moth", "flying-insects")]
    [InlineData("butterflies", "flying-insects")]
    [InlineData("solitary-bee", "flying-insects")]
    [InlineData("snail", "snails")]
    [InlineData("slugs", "snails")]
    [InlineData("ant", "crawling-insects-and-spiders")]
    [InlineData("newt", "amphibians")]
    [InlineData("water beetle", "water-animals")]
    [InlineData("sticklebacks", "water-animals")]
    [InlineData("snake", "reptiles")]
    [InlineData("mushrooms", "plants-and-fungi")]
    [InlineData("mosses", "plants-and-fungi")]
    [InlineData("scorpion", "scorpions")]
    [InlineData("millipede", "centipedes-and-millipedes")]
    [InlineData("mice", "small-mammals")]
    [InlineData("shell", "lifeless-things")]
    [InlineData("cast skin", "lifeless-things")]
    [InlineData("fossils", "lifeless-things")]
    public void What_people_call_it_is_answered_with_its_group(string written, string group)
    {
        var fault = Read(written).Diagnostics.Should().ContainSingle().Which;

        fault.Code.Should().Be(DiagnosticCodes.UnreadableValue);
        fault.Hint.Should().Contain($"'{group}'");
        Read(group).HasErrors.Should().BeFalse();
    }

    [Fact]
    public void Insects_are_asked_whether_they_fly_or_crawl() =>
        Read("insects").Diagnostics.Single().Hint.Should().Contain("'flying-insects'").And.Contain("'crawling-insects-and-spiders'");

    [Theory]
    [InlineData("smal-mammals", "small-mammals")]
    [InlineData("dragons", "flying-insects, crawling-insects-and-spiders")]
    public void What_nobody_knows_is_answered_with_every_group_or_the_nearest(string written, string hint) => Read(written).Diagnostics.Single().Hint.Should().Contain(hint);

    private static KitReadResult Read(string group) => KitReader.Parse(
        $"kit: Any\ncamera: {{name: body, sensor: 36 mm x 24 mm}}\nlenses: [{{name: reed, focal-length: 55 mm}}]\nsubjects: [{{name: one, group: {group}, length: 20 mm}}]\n", "kit.yaml", PartsLibrary.Embedded);
}
