using StudioKit.Kits;
using StudioKit.Kits.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <content>Changes of what holds an upright sheet.</content>
public abstract partial record KitChange
{
    /// <summary>An upright sheet that is held otherwise; what is none is left as it is.</summary>
    /// <param name="Stand">Name of the upright sheet.</param>
    public sealed record Restand(string Stand) : KitChange
    {
        /// <summary>Pegs that hold cords [1].</summary>
        public int? CordPegs { get; init; }

        /// <summary>What each peg must hold.</summary>
        public Mass? PegHold { get; init; }

        /// <summary>Mass on both feet.</summary>
        public Mass? Ballast { get; init; }

        /// <summary>Length of each foot.</summary>
        public Length? FootLength { get; init; }

        /// <summary>Thickness of the sheet; a mass as weighed is that of the old one and goes.</summary>
        public Length? Thickness { get; init; }

        /// <summary>Side across the view; a mass as weighed goes.</summary>
        public Length? Width { get; init; }

        /// <summary>Side from edge to edge; a mass as weighed goes.</summary>
        public Length? Height { get; init; }

        /// <summary>Whether it stands straight.</summary>
        public bool Straight { get; init; }

        /// <inheritdoc/>
        public override string Key => $"uprights.{this switch
        {
            { CordPegs: not null } => "cord-pegs",
            { PegHold: not null } => "peg-hold",
            { Ballast: not null } => "ballast",
            { FootLength: not null } => "foot-length",
            { Thickness: not null } => "sheet.thickness",
            { Width: not null } => "width",
            { Height: not null } => "height",
            _ => "lean",
        }}";

        /// <inheritdoc/>
        public override KitSpec Apply(KitSpec kit)
        {
            ArgumentNullException.ThrowIfNull(kit);
            return kit with { Uprights = [.. kit.Uprights.Select(upright => upright.Name == Stand ? Changed(upright) : upright)] };
        }

        private UprightSpec Changed(UprightSpec upright) => upright with
        {
            CordPegs = CordPegs ?? upright.CordPegs,
            PegHold = Read(PegHold) ?? upright.PegHold,
            Ballast = Read(Ballast) ?? upright.Ballast,
            FootLength = Read(FootLength) ?? upright.FootLength,
            Sheet = Thickness is null && Width is null && Height is null ? upright.Sheet : upright.Sheet with { Thickness = Read(Thickness) ?? upright.Sheet.Thickness, Mass = null },
            Width = Read(Width) ?? upright.Width,
            Height = Read(Height) ?? upright.Height,
            Lean = Straight ? Angle.Zero : upright.Lean,
        };

        // In the units in which a kit is read, so that the written kit is equal to this one.
        private static Mass? Read(Mass? mass) => mass is { } given ? Mass.FromGrams(given.Grams) : null;

        private static Length? Read(Length? length) => length is { } given ? Length.FromMillimeters(given.Millimeters) : null;
    }
}
