namespace Orlop.Hull.Surfaces;

/// <summary>What is wrong with a mesh.</summary>
public enum MeshProblemKind
{
    /// <summary>There are not even the four triangles that a body needs.</summary>
    TooFewTriangles,

    /// <summary>A corner is infinite, NaN, or farther out than any boat.</summary>
    ImpossibleCorner,

    /// <summary>A triangle names a corner that is not there.</summary>
    MissingCorner,

    /// <summary>A triangle uses one corner twice.</summary>
    CollapsedTriangle,

    /// <summary>An edge has a triangle on one side only: a hole.</summary>
    OpenEdge,

    /// <summary>An edge is run the same way by two triangles: one of them faces inwards, or three meet.</summary>
    ClashingEdge,

    /// <summary>The whole body is turned inside out, or holds nothing.</summary>
    InsideOut,
}

/// <summary>One thing wrong with a mesh, with the place where it is.</summary>
public sealed record MeshProblem(MeshProblemKind Kind, Point3 Place, string Message);
