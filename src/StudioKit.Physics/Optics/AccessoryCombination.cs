namespace StudioKit.Physics.Optics;

/// <summary>One choice of accessories and what it reaches.</summary>
/// <param name="Tubes">Places in <see cref="AccessoriesOnHand.ExtensionTubes"/> of the tubes used.</param>
/// <param name="CloseUps">Places in <see cref="AccessoriesOnHand.CloseUpLenses"/> of the close-up lenses used.</param>
/// <param name="Teleconverter">Place in <see cref="AccessoriesOnHand.Teleconverters"/> of the converter used; none where none is.</param>
/// <param name="Stack">The stack with these accessories.</param>
/// <param name="Range">Magnifications that the lens's own focusing then gives.</param>
public sealed record AccessoryCombination(
    IReadOnlyList<int> Tubes,
    IReadOnlyList<int> CloseUps,
    int? Teleconverter,
    OpticalStackCase Stack,
    MagnificationRange Range)
{
    /// <summary>Number of accessories to fit [1].</summary>
    public int Pieces => Tubes.Count + CloseUps.Count + (Teleconverter is null ? 0 : 1);

    /// <summary>Number of those that put glass in the way of the light [1].</summary>
    public int GlassPieces => Pieces - Tubes.Count;
}
