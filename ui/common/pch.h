#pragma once
// Precompiled for every ui room: the Qt headers that nearly all of them include.
#include <QtWidgets>

#include <memory>
#include <optional>
#include <string>
#include <vector>
