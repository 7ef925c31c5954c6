using StudioKit.Physics;

namespace StudioKit.Kits.Cards;

/// <summary>The card templates that come with StudioKit, one for each standard size.</summary>
public static class CardTemplates
{
    /// <summary>Their names, which are those of their sizes, smallest first.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. CardSize.Standard.Select(size => size.Name)];

    /// <summary>Text of a template's file, ready to be saved and changed.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="ArgumentException">There is no such template.</exception>
    public static string Text(string name)
    {
        using var stream = typeof(CardTemplates).Assembly.GetManifestResourceStream($"templates/card-{name}.yaml")
            ?? throw new ArgumentException($"There is no card template named {name}.", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>A template.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="ArgumentException">There is no such template.</exception>
    public static CardTemplate Of(string name) => CardTemplateReader.Parse(Text(name), $"templates/card-{name}.yaml") is { Template: { } template }
        ? template
        : throw new InvalidOperationException($"The template {name} that comes with StudioKit is broken.");

    /// <summary>A template for a size: its own where the size has a name, else that of the largest standard size which is not larger, at the size given.</summary>
    /// <param name="size">Size after trimming.</param>
    public static CardTemplate For(CardSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        Guard.Positive(size.Width.Millimeters);

        var area = size.Width.Millimeters * size.Height.Millimeters;
        var model = CardSize.Standard.LastOrDefault(standard => standard.Width.Millimeters * standard.Height.Millimeters <= area) ?? CardSize.Id1;
        return CardSize.Standard.Contains(size) ? Of(size.Name) : Of(model.Name) with { Name = size.Name, Size = size, Orientation = CardOrientation.Upright };
    }
}
