using StudioKit.Kits.Editing;
using StudioKit.Kits.Exploring;

namespace StudioKit.Kits.Tests;

/// <summary>What a kit leaves open, as it is written.</summary>
public sealed class ExploreKeysTests
{
    private const string Text = """
        kit: Moths
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses: [{name: reed 55, focal-length: 55 mm}, {name: alder 1.4, focal-length: 180 mm}]
        flashes: [{name: rush, guide-number: 30 m}]
        set-ups:
          - {name: dusk, kind: low-light-fill, lights: [{flash: rush, role: fill, distance: 1 m}]}

        """;

    /// <summary>Limits in the unit of their measure, by the definitions of the units: an ounce is 28.349523125 g and a mile an hour 0.44704 m/s (NIST SP 811), a watt-hour 3,600 J.</summary>
    [Theory]
    [InlineData("mass 3 kg", DesignMeasure.Mass, 3000)]
    [InlineData("mass 16 oz", DesignMeasure.Mass, 453.59237)]
    [InlineData("price 42.50", DesignMeasure.Price, 42.5)]
    [InlineData("white-margin +1/3 stop", DesignMeasure.WhiteMargin, 1.0 / 3)]
    [InlineData("first-white 80 %", DesignMeasure.FirstWhite, 0.8)]
    [InlineData("flashes 200", DesignMeasure.Flashes, 200)]
    [InlineData("energy 7200 J", DesignMeasure.Energy, 2)]
    [InlineData("packed-length 60 cm", DesignMeasure.PackedLength, 600)]
    [InlineData("pieces 40", DesignMeasure.Pieces, 40)]
    [InlineData("smear 5 µm", DesignMeasure.Smear, 5)]
    [InlineData("depth 2 mm", DesignMeasure.Depth, 2)]
    [InlineData("wind 10 mph", DesignMeasure.Wind, 4.4704)]
    [InlineData("cards 12", DesignMeasure.Cards, 12)]
    public void A_limit_is_read_in_the_unit_of_its_measure(string text, DesignMeasure measure, double amount)
    {
        DesignLimitText.TryRead(text, out var limit, out var problem).Should().BeTrue(problem);

        (limit!.Measure, limit.Text).Should().Be((measure, text));
        limit.Amount.Should().BeApproximately(amount, 1e-9 * amount);
    }

    [Theory]
    [InlineData("mass 3", "'3' has no unit")]
    [InlineData("mass", "has no amount")]
    [InlineData("mas 3 kg", "Did you mean 'mass'?")]
    [InlineData("white-margin 3 kg", "'3 kg'")]
    [InlineData("cards 2.5", "2.5")]
    public void A_limit_that_cannot_be_read_says_why(string text, string why)
    {
        DesignLimitText.TryRead(text, out var limit, out var problem).Should().BeFalse();

        limit.Should().BeNull();
        problem.Should().Contain(why);
    }

    [Theory]
    [InlineData("choices: [{name: a}]", "is empty")]
    [InlineData("choices: [{name: a, key: panel.width}]", "is empty")]
    [InlineData("choices: [{name: a, values: [3 mm]}]", "does not say of which key")]
    [InlineData("choices: [{name: a, key: panel.width, values: [3 mm], from: 1 mm, to: 2 mm, step: 1 mm}]", "in more than one way")]
    [InlineData("choices: [{name: a, key: panel.width, leave-out: [panel.width]}]", "has a key and no values")]
    [InlineData("choices: [{name: a, key: panel.width, from: 40 cm, to: 30 cm, step: 1 cm}]", "begins at its smaller value")]
    [InlineData("choices: [{name: a, key: panel.width, from: 40 cm, to: 500 mm, step: 1 cm}]", "different units")]
    [InlineData("choices: [{name: a, key: panel.width, from: 1 mm, to: 200 mm, step: 1 mm}]", "more than 100 values")]
    [InlineData("choices: [{name: a, key: panel.width, from: 1 mm, to: 2 mm, step: 0 mm}]", "above nought")]
    [InlineData("choices: [{name: a, key: panel.width, from: 1 mm, to: 2 mm}]", "'from', 'to' and 'step'")]
    [InlineData("choices: [{name: a, key: panel.width, values: [3 mm, 3 mm]}]", "twice")]
    [InlineData("choices: [{name: a, options: [{name: b}, {name: b}]}]", "two options named 'b'")]
    [InlineData("choices: [{name: a, leave-out: [panel.width]}, {name: a, leave-out: [panel.depth]}]", "'a'")]
    [InlineData("measures: [mass]", "two to four")]
    [InlineData("measures: [mass, price, wind, cards, pieces]", "two to four")]
    [InlineData("measures: [mass, mass]", "named twice")]
    [InlineData("limits: [mass 3]", "no unit")]
    public void What_is_left_open_without_sense_is_refused_in_its_line(string line, string why)
    {
        var read = Read($"explore:\n  {line}\n");

        read.Kit.Should().BeNull();
        read.Diagnostics.Should().ContainSingle(fault => fault.Severity == DiagnosticSeverity.Error).Which.Should().Match<Diagnostic>(fault => fault.Line == 8 && fault.Message.Contains(why));
    }

    /// <summary>Tenths and thirds of a step have no last digit in binary; the values are those of a sum by hand.</summary>
    [Fact]
    public void A_range_is_counted_in_decimal_steps() =>
        DesignRange.Values(new DesignChoiceSpec { Name = "a", From = "0.1 mm", To = "0.7 mm", Step = "0.1 mm" }).Should().Equal("0.1 mm", "0.2 mm", "0.3 mm", "0.4 mm", "0.5 mm", "0.6 mm", "0.7 mm");

    [Theory]
    [InlineData("lenses[reed 55].focal-length", "lenses[0].focal-length")]
    [InlineData("lenses[alder 1.4]", "lenses[1]")]
    [InlineData("set-ups[dusk].lights[rush].distance", "set-ups[0].lights[0].distance")]
    [InlineData("set-ups[0].lights[0]", "set-ups[0].lights[0]")]
    [InlineData("panel.width", "panel.width")]
    public void An_entry_goes_by_its_name_or_by_its_place(string path, string resolved)
    {
        NamedPath.Resolve(KitText.Of(Text), path, out var problem).Should().Be(resolved);
        problem.Should().BeEmpty();
    }

    [Theory]
    [InlineData("lenses[birch]", "It has 'reed 55', 'alder 1.4'.")]
    [InlineData("holders[stand]", "no list 'holders'")]
    [InlineData("lenses[reed 55", "not closed")]
    public void A_path_to_what_is_not_there_says_what_is(string path, string why)
    {
        NamedPath.Resolve(KitText.Of(Text), path, out var problem).Should().BeNull();
        problem.Should().Contain(why);
    }

    private static KitReadResult Read(string more) => KitReader.Parse(Text + more, "kit.yaml", PartsLibrary.Embedded);
}
