using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>All designs that a kit leaves open.</summary>
public sealed class DesignSpace
{
    private readonly DesignTexts _texts;
    private readonly Func<string, KitReadResult> _reader;

    internal DesignSpace(DesignTexts texts, KitReadResult asWritten, Func<string, KitReadResult> reader, ValueList<DesignChoice> choices)
    {
        (_texts, AsWritten, _reader, Choices) = (texts, asWritten, reader, choices);
        Own = new([.. choices.Select(choice => choice.Own)]);
    }

    /// <summary>The kit as it was written.</summary>
    public KitReadResult AsWritten { get; }

    /// <summary>What is left open; at least one choice.</summary>
    public ValueList<DesignChoice> Choices { get; }

    /// <summary>The design that the kit is as it was written.</summary>
    public DesignCode Own { get; }

    /// <summary>How many designs there are [1]; ≥ 2.</summary>
    public double Count => Choices.Aggregate(1.0, (count, choice) => count * choice.Options.Count);

    /// <summary>The options that a design takes, in the order of the choices.</summary>
    /// <param name="design">The design.</param>
    public IEnumerable<DesignOption> OptionsOf(DesignCode design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return Choices.Zip(design.Options, (choice, option) => choice.Options[option]);
    }

    /// <summary>A design's kit as a text, the kit's own with its values changed; comments and order stay.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The text; none where the kit cannot take the options beside each other.</returns>
    public KitText? TextOf(DesignCode design) => _texts.With([.. OptionsOf(design).SelectMany(option => option.Settings)]);

    /// <summary>A design's kit as it is read.</summary>
    /// <param name="design">The design.</param>
    /// <returns>What was read, with its diagnostics; none where the kit cannot take the options beside each other.</returns>
    public KitReadResult? Read(DesignCode design) => design == Own ? AsWritten : TextOf(design) is { } text ? _reader(text.Text) : null;

    /// <summary>What a design's options cost beside its shopping list.</summary>
    /// <param name="design">The design.</param>
    public decimal PriceOf(DesignCode design) => OptionsOf(design).Sum(option => option.Price);

    /// <summary>The designs that differ from one in a single choice, choice by choice.</summary>
    /// <param name="design">The design.</param>
    public IEnumerable<DesignCode> BesideOf(DesignCode design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return Choices.SelectMany((choice, place) => Enumerable.Range(0, choice.Options.Count).Where(option => option != design.Options[place]).Select(option => design.With(place, option)));
    }

    /// <summary>Reads what a kit leaves open.</summary>
    /// <param name="text">The kit's text.</param>
    /// <param name="asWritten">The same as it was read, without errors.</param>
    /// <param name="reader">Reads a changed text in the same way: with the same parts and corrections.</param>
    /// <returns>The designs, or what stands in their way.</returns>
    /// <exception cref="ArgumentException">The reading holds no kit.</exception>
    public static DesignSpaceReading Of(KitText text, KitReadResult asWritten, Func<string, KitReadResult> reader) => Steps(text, asWritten, reader).Last()!;

    /// <summary>Reads what a kit leaves open a choice at a time, so that others have their turn in between.</summary>
    /// <inheritdoc cref="Of" path="/param"/>
    /// <returns>Nothing for each choice, then the designs or what stands in their way.</returns>
    /// <exception cref="ArgumentException">The reading holds no kit.</exception>
    public static IEnumerable<DesignSpaceReading?> Steps(KitText text, KitReadResult asWritten, Func<string, KitReadResult> reader)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(asWritten);
        ArgumentNullException.ThrowIfNull(reader);
        if (asWritten.Kit is not { } kit)
        {
            throw new ArgumentException("The kit could not be read; see its diagnostics.", nameof(asWritten));
        }

        return new DesignSpaceReader(new DesignTexts(text), asWritten, reader).Steps(kit.Explore is { Choices.Count: > 0 } explore ? explore.Choices : [], UsualChoices.Of(kit, text, asWritten.Written));
    }
}
