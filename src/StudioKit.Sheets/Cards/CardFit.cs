using StudioKit.Kits.Cards;

namespace StudioKit.Sheets.Cards;

/// <summary>Whether cards go onto the paper that they are printed on.</summary>
public static class CardFit
{
    /// <summary>Whether at least one card of a template, with its crop marks and the seal around it, fits on a page.</summary>
    /// <param name="template">The template.</param>
    /// <param name="paper">The paper.</param>
    /// <exception cref="ArgumentNullException">There is no template.</exception>
    public static bool On(CardTemplate template, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(template);
        return CardGrid.For(paper, template.Size, template.LaminationMargin.Millimeters).PerPage > 0;
    }
}
