namespace StudioKit.Web.Results;

/// <summary>Everything that can be printed of a kit, what is wanted first in the field first.</summary>
/// <param name="Groups">The groups; empty where the kit cannot be read.</param>
/// <param name="CutNote">What to know of the cut plans made here.</param>
public sealed record SheetOffers(IReadOnlyList<SheetOffer> Groups, string CutNote);
