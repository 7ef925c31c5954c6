using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Kits.Studio;

/// <summary>Keys of the panel and of the frame that carries it.</summary>
internal static class StudioSections
{
    public static readonly Section<PanelSpec> Panel = new Section<PanelSpec>("panel", "The translucent sheet the subject stands on.", new(), partKind: "sheets")
        .Optional("material", Kinds.Name, "Material as named on the shopping list.", (panel, value) => panel with { Material = (string)value! }, panel => panel.Material)
        .Free("width", Kinds.Length, "Side across the camera's view; else computed from the framings.", (panel, value) => panel with { Width = (Length)value! }, "5 cm", "3 m")
        .Free("depth", Kinds.Length, "Side along the camera's view; else computed.", (panel, value) => panel with { Depth = (Length)value! }, "5 cm", "3 m")
        .Optional("thickness", Kinds.Length, "Thickness.", (panel, value) => panel with { Thickness = (Length)value! }, panel => panel.Thickness, "0.1 mm", "30 mm")
        .Optional("margin", Kinds.Length, "Sheet kept beyond the visible field on every side.",
            (panel, value) => panel with { Margin = (Length)value! }, panel => panel.Margin, "0 mm", "1 m")
        .Optional("transmittance", Kinds.Ratio, "Total luminous transmittance, above 0 and at most 1.",
            (panel, value) => panel with { Transmittance = (double)value! }, panel => panel.Transmittance, "0.001", "1")
        .Optional("scatter-exponent", Kinds.Plain, "Exponent of the lobe that leaves the top; 0 is Lambertian, more is a poorer diffuser.",
            (panel, value) => panel with { ScatterExponent = (double)value! }, panel => panel.ScatterExponent, "0", "1000")
        .Optional("underside-reflectance", Kinds.Ratio, "Diffuse reflectance of the underside.",
            (panel, value) => panel with { UndersideReflectance = (double)value! }, panel => panel.UndersideReflectance, "0", "1")
        .Optional("skirts", Kinds.YesNo, "Whether white skirts close the space under the panel.", (panel, value) => panel with { Skirts = (bool)value! }, panel => panel.Skirts)
        .Optional("skirt-reflectance", Kinds.Ratio, "Diffuse reflectance of the skirts.",
            (panel, value) => panel with { SkirtReflectance = (double)value! }, panel => panel.SkirtReflectance, "0", "1")
        .Optional("skirt-areal-mass", Kinds.AreaDensity, "Mass of a square metre of skirt.",
            (panel, value) => panel with { SkirtArealMass = (AreaDensity)value! }, panel => panel.SkirtArealMass, "1 g/m²", "20 kg/m²")
        .Optional("density", Kinds.Density, "Density of the sheet.", (panel, value) => panel with { Density = (Density)value! }, panel => panel.Density, "100 kg/m³", "10000 kg/m³")
        .Optional("youngs-modulus", Kinds.Pressure, "Young's modulus.", (panel, value) => panel with { YoungsModulus = (Pressure)value! }, panel => panel.YoungsModulus, "10 MPa", "500 GPa")
        .Optional("poisson-ratio", Kinds.Plain, "Poisson's ratio.", (panel, value) => panel with { PoissonRatio = (double)value! }, panel => panel.PoissonRatio, "0", "0.499")
        .Optional("long-term-stress", Kinds.Pressure, "Bending stress that it bears for long without crazing.",
            (panel, value) => panel with { LongTermStress = (Pressure)value! }, panel => panel.LongTermStress, "0.1 MPa", "1 GPa")
        .Optional("short-term-stress", Kinds.Pressure, "Bending stress that it bears for a moment: a third of its flexural strength.",
            (panel, value) => panel with { ShortTermStress = (Pressure)value! }, panel => panel.ShortTermStress, "0.1 MPa", "1 GPa")
        .Optional("making", Kinds.Choice(typeof(SheetMaking), "a way of making sheet"), "How the sheet was made; how thin it may be by its standard depends on it.",
            (panel, value) => panel with { Making = (SheetMaking)value! }, panel => panel.Making)
        .Optional("thermal-expansion", Kinds.Expansion, "Linear thermal expansion.",
            (panel, value) => panel with { ThermalExpansion = (CoefficientOfThermalExpansion)value! }, panel => panel.ThermalExpansion, "0 /K", "1e-3 /K")
        .Optional("cold-bend-ratio", Kinds.Plain, "Smallest radius it bends to cold, in thicknesses.",
            (panel, value) => panel with { ColdBendRatio = (double)value! }, panel => panel.ColdBendRatio, "1", "10000")
        .Optional("elbow-load", Kinds.Force, "Push of an elbow leant on the panel or a rail.",
            (panel, value) => panel with { ElbowLoad = (Force)value! }, panel => panel.ElbowLoad, "0 N", "2 kN")
        .Optional("subject-in-box", Kinds.Mass, "Mass of the heaviest subject with the box that holds it.",
            (panel, value) => panel with { SubjectInBox = (Mass)value! }, panel => panel.SubjectInBox, "0 g", "20 kg")
        .Free("sweep-angle", Kinds.Angle, "Angle that the swept back turns through; else what the lowest framing needs.",
            (panel, value) => panel with { SweepAngle = (Angle)value! }, "1°", "90°")
        .Optional("keep-direction", Kinds.YesNo, "Whether the panel keeps the stock sheet's direction when it is cut.",
            (panel, value) => panel with { KeepDirection = (bool)value! }, panel => panel.KeepDirection)
        .Optional("skirt-material", Kinds.Name, "Material of the skirts, matched with the stock's sheets.",
            (panel, value) => panel with { SkirtMaterial = (string)value! }, panel => panel.SkirtMaterial)
        .Free("sweep-radius", Kinds.Length, "Radius of the swept back; a flat panel where none is given.", (panel, value) => panel with { SweepRadius = (Length)value! }, "1 cm", "10 m")
        .Free("mass", Kinds.Mass, "Mass as weighed; else from geometry and density.", (panel, value) => panel with { Mass = (Mass)value! }, "1 g", "100 kg");

    public static readonly Section<PipeSpec> Pipe = new Section<PipeSpec>("pipe", "A pipe or round tube.", new(), partKind: "pipes")
        .Optional("name", Kinds.Name, "Name on the shopping list.", (pipe, value) => pipe with { Name = (string)value! }, pipe => pipe.Name)
        .Optional("outside-diameter", Kinds.Length, "Outside diameter.", (pipe, value) => pipe with { OutsideDiameter = (Length)value! }, pipe => pipe.OutsideDiameter, "2 mm", "200 mm")
        .Optional("wall", Kinds.Length, "Wall thickness.", (pipe, value) => pipe with { Wall = (Length)value! }, pipe => pipe.Wall, "0.1 mm", "100 mm")
        .Optional("density", Kinds.Density, "Density of the material.", (pipe, value) => pipe with { Density = (Density)value! }, pipe => pipe.Density, "100 kg/m³", "20000 kg/m³")
        .Free("mass-per-length", Kinds.LinearDensity, "Mass of a metre as catalogued or weighed; else from geometry and density.",
            (pipe, value) => pipe with { MassPerLength = (LinearDensity)value! }, "1 g/m", "20 kg/m")
        .Optional("youngs-modulus", Kinds.Pressure, "Young's modulus at 23 °C.", (pipe, value) => pipe with { YoungsModulus = (Pressure)value! }, pipe => pipe.YoungsModulus, "10 MPa", "1000 GPa")
        .Optional("strength", Kinds.Pressure, "Tensile strength at 23 °C.", (pipe, value) => pipe with { Strength = (Pressure)value! }, pipe => pipe.Strength, "1 MPa", "10 GPa")
        .Optional("thermal-expansion", Kinds.Expansion, "Linear thermal expansion.",
            (pipe, value) => pipe with { ThermalExpansion = (CoefficientOfThermalExpansion)value! }, pipe => pipe.ThermalExpansion, "0 /K", "1e-3 /K")
        .Optional("softens-like-pvc", Kinds.YesNo, "Whether stiffness and strength fall with temperature as PVC's do.",
            (pipe, value) => pipe with { SoftensLikePvc = (bool)value! }, pipe => pipe.SoftensLikePvc)
        .Check(pipe => pipe.Wall.Millimeters <= pipe.OutsideDiameter.Millimeters / 2
            ? null
            : new Fault("wall", "The wall is thicker than half the outside diameter.", "A solid rod has a wall of half its diameter."));

    public static readonly Section<FittingSpec> Fitting = new Section<FittingSpec>(
        "fitting", "One kind of fitting; measured values beat catalogued ones.", new() { TakeOff = Length.Zero, SocketDepth = Length.Zero, Mass = Mass.Zero })
        .Optional("take-off", Kinds.Length, "Centre of the fitting to the bottom of its socket.",
            (fitting, value) => fitting with { TakeOff = (Length)value! }, fitting => fitting.TakeOff, "0 mm", "200 mm")
        .Optional("socket-depth", Kinds.Length, "Depth of its socket.", (fitting, value) => fitting with { SocketDepth = (Length)value! }, fitting => fitting.SocketDepth, "1 mm", "200 mm")
        .Optional("mass", Kinds.Mass, "Mass of one.", (fitting, value) => fitting with { Mass = (Mass)value! }, fitting => fitting.Mass, "0.1 g", "5 kg")
        .Free("price", Kinds.Price, "Price of one in the stock's currency.", (fitting, value) => fitting with { Price = (decimal)value! }, "0", "100000");

    public static readonly Section<FittingsSpec> Fittings = new Section<FittingsSpec>("fittings", "A family of fittings for one pipe size.", new(), partKind: "fittings")
        .Optional("name", Kinds.Name, "Name of the family on the shopping list.", (all, value) => all with { Name = (string)value! }, all => all.Name)
        .Within("elbow", Fitting, "Elbow of 90°.", (all, value) => all with { Elbow = value }, all => all.Elbow)
        .Within("tee", Fitting, "Tee.", (all, value) => all with { Tee = value }, all => all.Tee)
        .Within("cross", Fitting, "Cross with four ports in one plane.", (all, value) => all with { Cross = value }, all => all.Cross)
        .Within("corner", Fitting, "Corner with three ports at right angles.", (all, value) => all with { Corner = value }, all => all.Corner)
        .Within("coupling", Fitting, "Straight coupling; its take-off is half the stop in its middle.", (all, value) => all with { Coupling = value }, all => all.Coupling)
        .Within("cap", Fitting, "End cap; its take-off is nought.", (all, value) => all with { Cap = value }, all => all.Cap);

    public static readonly Section<PegsSpec> Pegs = new Section<PegsSpec>("pegs", "Pegs that hold the feet to the ground.", new())
        .Optional("count", Kinds.Count, "How many, spread evenly over the feet.", (pegs, value) => pegs with { Count = (int)value! }, pegs => pegs.Count, "0", "100")
        .Optional("hold", Kinds.Mass, "What one holds, as a spring balance reads when it pulls the peg out of the ground of the place.",
            (pegs, value) => pegs with { Hold = (Mass)value! }, pegs => pegs.Hold, "0 g", "500 kg")
        .Optional("guys", Kinds.YesNo, "Whether they hold cords at 45° from the top corners instead of the feet.", (pegs, value) => pegs with { Guys = (bool)value! }, pegs => pegs.Guys);

    public static readonly Section<FrameSpec> Frame = new Section<FrameSpec>("frame", "The pipe frame that carries the panel.", new())
        .Optional("kind", Kinds.Choice(typeof(FrameKind), "a kind of frame"), "Shape of the frame.", (frame, value) => frame with { Kind = (FrameKind)value! }, frame => frame.Kind)
        .Optional("height", Kinds.Length, "Ground to the panel's underside.", (frame, value) => frame with { Height = (Length)value! }, frame => frame.Height, "1 cm", "3 m")
        .Within("pipe", Pipe, "The pipe it is made of.", (frame, value) => frame with { Pipe = value }, frame => frame.Pipe)
        .Within("fittings", Fittings, "The fittings that join it.", (frame, value) => frame with { Fittings = value }, frame => frame.Fittings)
        .Optional("insertion-gap", Kinds.Length, "How far short of its socket's bottom a dry push fit stops.",
            (frame, value) => frame with { InsertionGap = (Length)value! }, frame => frame.InsertionGap, "0 mm", "50 mm")
        .Optional("panel-seat", Kinds.Choice(typeof(PanelSeat), "a seat of the panel"), "On pads over the rails, or on a ledge between them.",
            (frame, value) => frame with { PanelSeat = (PanelSeat)value! }, frame => frame.PanelSeat)
        .Optional("pad", Kinds.Length, "Pad between rail and panel, at least as thick as a fitting stands proud of the pipe.",
            (frame, value) => frame with { Pad = (Length)value! }, frame => frame.Pad, "0 mm", "50 mm")
        .Optional("edge-clearance", Kinds.Length, "Room at every panel edge for growth.",
            (frame, value) => frame with { EdgeClearance = (Length)value! }, frame => frame.EdgeClearance, "0 mm", "50 mm")
        .Optional("stretchers", Kinds.Choice(typeof(FrameStretchers), "a rule for stretchers"), "When lower stretchers tie the legs.",
            (frame, value) => frame with { Stretchers = (FrameStretchers)value! }, frame => frame.Stretchers)
        .Optional("cradle-stand-off", Kinds.Length, "Centre line of the cradle rail to the bright window of the flash on it.",
            (frame, value) => frame with { CradleStandOff = (Length)value! }, frame => frame.CradleStandOff, "0 mm", "500 mm")
        .Optional("joint-stiffness", Kinds.JointStiffness, "Rotational stiffness of one push fit, as a spring balance on a lever tells it.",
            (frame, value) => frame with { JointStiffness = (RotationalStiffness)value! }, frame => frame.JointStiffness, "1 N·m/rad", "100000 N·m/rad")
        .Optional("foot-travel", Kinds.Length, "How far a foot's screw turns out.",
            (frame, value) => frame with { FootTravel = (Length)value! }, frame => frame.FootTravel, "0 mm", "1 m")
        .Optional("ballast", Kinds.Mass, "Mass hung under the middle by cords from the top corners.",
            (frame, value) => frame with { Ballast = (Mass)value! }, frame => frame.Ballast, "0 g", "200 kg")
        .Within("pegs", Pegs, "Pegs through the feet.", (frame, value) => frame with { Pegs = value }, frame => frame.Pegs)
        .Free("longest-piece", Kinds.Length, "Longest piece allowed; else the pack's inside length.", (frame, value) => frame with { LongestPiece = (Length)value! }, "5 cm", "6 m")
        .Free("mass", Kinds.Mass, "Mass as weighed; else from geometry and density.", (frame, value) => frame with { Mass = (Mass)value! }, "1 g", "100 kg");
}
